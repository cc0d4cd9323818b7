-- What is in the cupboard, who touches the books, and the ledger they are written in. One text for SQLite and PostgreSQL.
-- What is weighed is kept in whole milligrams, what is counted in pieces; a day is a text such as 2026-11-25, for it has no hour and
-- no zone. Names of people stand in person and nowhere else.

CREATE TABLE person (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort         TEXT    NOT NULL,
    role              TEXT    NOT NULL CHECK (role IN ('maker', 'helper')),
    added_epoch_ms    BIGINT  NOT NULL,
    removed_epoch_ms  BIGINT
);

CREATE TABLE ledger_entry (
    number            BIGINT  NOT NULL PRIMARY KEY CHECK (number >= 1),
    at_epoch_ms       BIGINT  NOT NULL,
    person_id         TEXT    NOT NULL REFERENCES person (id),
    device_id         TEXT    CHECK (length(device_id) = 36),
    kind              TEXT    NOT NULL CHECK (length(kind) BETWEEN 1 AND 40),
    entry_text        TEXT    NOT NULL CHECK (length(entry_text) BETWEEN 2 AND 2000000),
    sha256            TEXT    NOT NULL UNIQUE CHECK (length(sha256) = 64)
);

-- What was sent once is done once, though the answer was lost and it was sent again.
CREATE TABLE ledger_once (
    token             TEXT    NOT NULL PRIMARY KEY CHECK (length(token) BETWEEN 8 AND 100),
    number            BIGINT  NOT NULL REFERENCES ledger_entry (number)
);

CREATE TABLE supplier (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort         TEXT    NOT NULL,
    contact           TEXT    NOT NULL CHECK (length(contact) <= 2000),
    notes             TEXT    NOT NULL CHECK (length(notes) <= 10000),
    changed_epoch_ms  BIGINT  NOT NULL,
    removed_epoch_ms  BIGINT
);

CREATE TABLE stock_item (
    id                  TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name                TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort           TEXT    NOT NULL,
    kind                TEXT    NOT NULL CHECK (kind IN ('oil', 'alkali', 'additive', 'colourant', 'fragrance', 'packaging')),
    measure             TEXT    NOT NULL CHECK (measure IN ('mass', 'pieces')),
    material_key        TEXT    CHECK (length(material_key) BETWEEN 1 AND 200),
    inci                TEXT    NOT NULL CHECK (length(inci) <= 500),
    cas                 TEXT    NOT NULL CHECK (length(cas) <= 200),
    species             TEXT    NOT NULL CHECK (length(species) <= 200),
    part                TEXT    NOT NULL CHECK (length(part) <= 200),
    product_code        TEXT    NOT NULL CHECK (length(product_code) <= 200),
    certificate_version TEXT    NOT NULL CHECK (length(certificate_version) <= 200),
    supplier_id         TEXT    REFERENCES supplier (id),
    reorder_milligrams  BIGINT  CHECK (reorder_milligrams > 0),
    reorder_unit        TEXT    CHECK (reorder_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    reorder_pieces      BIGINT  CHECK (reorder_pieces > 0),
    notes               TEXT    NOT NULL CHECK (length(notes) <= 10000),
    changed_epoch_ms    BIGINT  NOT NULL,
    removed_epoch_ms    BIGINT,
    CHECK ((reorder_milligrams IS NULL) = (reorder_unit IS NULL)),
    CHECK (measure = 'mass' OR reorder_milligrams IS NULL),
    CHECK (measure = 'pieces' OR reorder_pieces IS NULL)
);
CREATE UNIQUE INDEX stock_item_by_material ON stock_item (material_key) WHERE material_key IS NOT NULL AND removed_epoch_ms IS NULL;

-- What the maker's own spoon holds of it.
CREATE TABLE spoon (
    item_id           TEXT    NOT NULL REFERENCES stock_item (id),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
    milligrams        BIGINT  NOT NULL CHECK (milligrams > 0),
    PRIMARY KEY (item_id, name)
);

CREATE TABLE lot (
    id                  TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    item_id             TEXT    NOT NULL REFERENCES stock_item (id),
    own_code            TEXT    NOT NULL UNIQUE CHECK (length(own_code) BETWEEN 1 AND 60),
    supplier_id         TEXT    REFERENCES supplier (id),
    supplier_lot        TEXT    NOT NULL CHECK (length(supplier_lot) <= 200),
    received_day        TEXT    NOT NULL CHECK (length(received_day) = 10),
    opened_day          TEXT    CHECK (length(opened_day) = 10),
    best_before_day     TEXT    CHECK (length(best_before_day) = 10),
    price_minor         BIGINT  CHECK (price_minor >= 0),
    price_currency      TEXT    CHECK (length(price_currency) = 3),
    status              TEXT    NOT NULL CHECK (status IN ('quarantine', 'usable', 'refused')),
    certificate_text    TEXT    CHECK (length(certificate_text) BETWEEN 1 AND 200000),
    notes               TEXT    NOT NULL CHECK (length(notes) <= 10000),
    entry_number        BIGINT  NOT NULL REFERENCES ledger_entry (number),
    CHECK ((price_minor IS NULL) = (price_currency IS NULL))
);
CREATE INDEX lot_by_item ON lot (item_id, best_before_day);

CREATE TABLE stock_move (
    number            BIGINT  NOT NULL PRIMARY KEY REFERENCES ledger_entry (number),
    lot_id            TEXT    NOT NULL REFERENCES lot (id),
    kind              TEXT    NOT NULL CHECK (kind IN ('receipt', 'use', 'loss', 'count', 'return')),
    milligrams        BIGINT,
    pieces            BIGINT,
    corrects_number   BIGINT  UNIQUE REFERENCES stock_move (number),
    purpose           TEXT    NOT NULL CHECK (length(purpose) <= 500),
    words             TEXT    NOT NULL CHECK (length(words) <= 200),
    why               TEXT    NOT NULL CHECK (length(why) <= 2000),
    CHECK ((milligrams IS NULL) <> (pieces IS NULL)),
    CHECK (kind = 'count' OR coalesce(milligrams, pieces) <> 0)
);
-- all that a sum asks for, so that no row of a move is read for it
CREATE INDEX stock_move_by_lot ON stock_move (lot_id, kind, milligrams, pieces);

CREATE TABLE document (
    sha256            TEXT    NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
    media_type        TEXT    NOT NULL CHECK (media_type IN ('application/pdf', 'image/jpeg', 'text/plain')),
    size_bytes        BIGINT  NOT NULL CHECK (size_bytes > 0),
    kept_epoch_ms     BIGINT  NOT NULL
);

CREATE TABLE lot_document (
    lot_id            TEXT    NOT NULL REFERENCES lot (id),
    sha256            TEXT    NOT NULL REFERENCES document (sha256),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    entry_number      BIGINT  NOT NULL REFERENCES ledger_entry (number),
    PRIMARY KEY (lot_id, sha256)
);
