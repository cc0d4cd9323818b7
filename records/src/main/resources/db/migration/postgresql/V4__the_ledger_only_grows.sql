-- A ledger is written on and never over: a correction is a new row that names the one it corrects.
CREATE TRIGGER ledger_entry_is_not_altered BEFORE UPDATE ON ledger_entry
    FOR EACH ROW EXECUTE FUNCTION refuse_change('the ledger is not altered');

CREATE TRIGGER ledger_entry_is_not_deleted BEFORE DELETE ON ledger_entry
    FOR EACH ROW EXECUTE FUNCTION refuse_change('the ledger is not shortened');

CREATE TRIGGER stock_move_is_not_altered BEFORE UPDATE ON stock_move
    FOR EACH ROW EXECUTE FUNCTION refuse_change('a move is not altered');

CREATE TRIGGER stock_move_is_not_deleted BEFORE DELETE ON stock_move
    FOR EACH ROW EXECUTE FUNCTION refuse_change('a move is not deleted');

CREATE TRIGGER lot_is_not_deleted BEFORE DELETE ON lot
    FOR EACH ROW EXECUTE FUNCTION refuse_change('a lot is not deleted');
