-- A version that a batch was made from is never altered and never goes away, whoever asks.
CREATE TRIGGER recipe_version_made_is_not_altered BEFORE UPDATE ON recipe_version WHEN OLD.made_epoch_ms IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'a version that was made from is not altered');
END;

CREATE TRIGGER recipe_version_made_is_not_deleted BEFORE DELETE ON recipe_version WHEN OLD.made_epoch_ms IS NOT NULL
BEGIN
    SELECT RAISE(ABORT, 'a version that was made from is not deleted');
END;
