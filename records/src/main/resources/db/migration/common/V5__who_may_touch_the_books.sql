-- Who writes in the books, on which device, and what they did. One text for SQLite and PostgreSQL. Names of people stand in person and
-- nowhere else.

-- A telephone or a computer that was let in, or somebody's browser in which they signed in.
CREATE TABLE device (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    person_id         TEXT    NOT NULL REFERENCES person (id),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    let_in_by         TEXT    NOT NULL CHECK (let_in_by IN ('code', 'password')),
    added_epoch_ms    BIGINT  NOT NULL,
    removed_epoch_ms  BIGINT
);
CREATE INDEX device_by_person ON device (person_id);

-- What a device shows to be known again, as a digest: whoever reads this cannot pass for it. It is in no backup and no restore touches it, so
-- that it refers to nothing: a device that is not there is not let in.
CREATE TABLE device_session (
    token_sha256      TEXT    NOT NULL PRIMARY KEY CHECK (length(token_sha256) = 64),
    device_id         TEXT    NOT NULL UNIQUE CHECK (length(device_id) = 36),
    seen_epoch_ms     BIGINT  NOT NULL
);

-- A password by its Argon2id digest, with its salt and its costs as one text.
CREATE TABLE person_password (
    person_id         TEXT    NOT NULL PRIMARY KEY REFERENCES person (id),
    argon2id          TEXT    NOT NULL CHECK (length(argon2id) BETWEEN 20 AND 500),
    changed_epoch_ms  BIGINT  NOT NULL
);

-- Who did what to something that is no entry of the ledger: a line for every write.
CREATE TABLE signature (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    at_epoch_ms       BIGINT  NOT NULL,
    person_id         TEXT    NOT NULL REFERENCES person (id),
    device_id         TEXT    CHECK (length(device_id) = 36),
    thing             TEXT    NOT NULL CHECK (thing IN ('recipe', 'mould', 'balance', 'jug', 'material', 'settings', 'supplier',
                                'stocked material', 'person', 'device', 'password', 'network')),
    thing_id          TEXT    NOT NULL CHECK (length(thing_id) BETWEEN 1 AND 36),
    version           INTEGER CHECK (version >= 1),
    deed              TEXT    NOT NULL CHECK (deed IN ('kept', 'removed', 'put back', 'made'))
);
CREATE INDEX signature_of ON signature (thing, thing_id, version);

-- Whether other devices may knock at this computer, or those of the local network may not even find it. Of this computer, so in no backup.
CREATE TABLE network_door (
    id                INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
    opened_epoch_ms   BIGINT  NOT NULL
);

-- Which lots hold something (or less than nothing). How much is the sum of their moves, as ever; this only spares a page from summing what
-- was used up years ago. Written with each move, and verify holds it against the sums.
CREATE TABLE lot_held (
    lot_id            TEXT    NOT NULL PRIMARY KEY REFERENCES lot (id),
    since_number      BIGINT  NOT NULL REFERENCES stock_move (number)
);
INSERT INTO lot_held (lot_id, since_number)
SELECT lot_id, min(number) FROM stock_move GROUP BY lot_id HAVING sum(coalesce(milligrams, pieces)) <> 0;
