-- Who typed last in what is not saved yet, and where. Empty in what was typed before this was asked. One text for SQLite and PostgreSQL. They
-- refer to nothing: the maker at the computer may type before anything is written of them.
ALTER TABLE draft ADD COLUMN person_id TEXT CHECK (length(person_id) = 36);
ALTER TABLE draft ADD COLUMN device_id TEXT CHECK (length(device_id) = 36);

-- Restores over entries that they lost are few among many, and asked for with each lot that comes.
CREATE INDEX ledger_entry_of_restores ON ledger_entry (number) WHERE kind = 'restore';
