-- A version that a batch was made from is never altered and never goes away, whoever asks.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0] USING ERRCODE = 'integrity_constraint_violation';
END;
$$;

CREATE TRIGGER recipe_version_made_is_not_altered BEFORE UPDATE ON recipe_version
    FOR EACH ROW WHEN (OLD.made_epoch_ms IS NOT NULL)
    EXECUTE FUNCTION refuse_change('a version that was made from is not altered');

CREATE TRIGGER recipe_version_made_is_not_deleted BEFORE DELETE ON recipe_version
    FOR EACH ROW WHEN (OLD.made_epoch_ms IS NOT NULL)
    EXECUTE FUNCTION refuse_change('a version that was made from is not deleted');
