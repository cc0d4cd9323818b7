-- A ledger is written on and never over: a correction is a new row that names the one it corrects.
CREATE TRIGGER ledger_entry_is_not_altered BEFORE UPDATE ON ledger_entry
BEGIN
    SELECT RAISE(ABORT, 'the ledger is not altered');
END;

CREATE TRIGGER ledger_entry_is_not_deleted BEFORE DELETE ON ledger_entry
BEGIN
    SELECT RAISE(ABORT, 'the ledger is not shortened');
END;

CREATE TRIGGER stock_move_is_not_altered BEFORE UPDATE ON stock_move
BEGIN
    SELECT RAISE(ABORT, 'a move is not altered');
END;

CREATE TRIGGER stock_move_is_not_deleted BEFORE DELETE ON stock_move
BEGIN
    SELECT RAISE(ABORT, 'a move is not deleted');
END;

CREATE TRIGGER lot_is_not_deleted BEFORE DELETE ON lot
BEGIN
    SELECT RAISE(ABORT, 'a lot is not deleted');
END;
