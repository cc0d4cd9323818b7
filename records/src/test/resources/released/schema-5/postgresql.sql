-- A PostgreSQL schema as a release left it. Made by ReleaseFixture; never changed.
CREATE TABLE flyway_schema_history (
    installed_rank INTEGER NOT NULL PRIMARY KEY,
    version        VARCHAR(50),
    description    VARCHAR(200) NOT NULL,
    type           VARCHAR(20) NOT NULL,
    script         VARCHAR(1000) NOT NULL,
    checksum       INTEGER,
    installed_by   VARCHAR(100) NOT NULL,
    installed_on   TIMESTAMP NOT NULL DEFAULT now(),
    execution_time INTEGER NOT NULL,
    success        BOOLEAN NOT NULL
);
CREATE INDEX flyway_schema_history_s_idx ON flyway_schema_history (success);

-- What a workshop keeps. One text for SQLite and PostgreSQL. Never changed once released: what comes later is a new file.
-- Masses are whole milligrams, lengths whole micrometres, volumes whole microlitres, times epoch milliseconds in UTC. Beside a figure
-- that somebody typed stands the unit it was typed in. Ids are made by the application.

CREATE TABLE workshop (
    id                INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    units             TEXT    NOT NULL CHECK (units IN ('grams', 'ounces')),
    degrees           TEXT    NOT NULL CHECK (degrees IN ('celsius', 'fahrenheit')),
    currency          TEXT    NOT NULL CHECK (length(currency) = 3),
    market            TEXT    NOT NULL CHECK (market IN ('eu', 'gb', 'us', 'other')),
    paper             TEXT    NOT NULL CHECK (paper IN ('a4', 'letter')),
    sodium_purity     TEXT    CHECK (length(sodium_purity) BETWEEN 1 AND 40),
    potassium_purity  TEXT    CHECK (length(potassium_purity) BETWEEN 1 AND 40),
    hold_back         TEXT    NOT NULL CHECK (length(hold_back) BETWEEN 1 AND 40),
    changed_epoch_ms  BIGINT  NOT NULL
);

CREATE TABLE photograph (
    sha256            TEXT    NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
    size_bytes        BIGINT  NOT NULL CHECK (size_bytes > 0),
    kept_epoch_ms     BIGINT  NOT NULL
);

CREATE TABLE recipe (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name              TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort         TEXT    NOT NULL,
    search_text       TEXT    NOT NULL,
    newest_version    INTEGER NOT NULL CHECK (newest_version >= 1),
    photograph_sha256 TEXT    REFERENCES photograph (sha256),
    added_epoch_ms    BIGINT  NOT NULL,
    changed_epoch_ms  BIGINT  NOT NULL,
    deleted_epoch_ms  BIGINT
);
CREATE INDEX recipe_by_name_sort ON recipe (name_sort, id, deleted_epoch_ms) WHERE deleted_epoch_ms IS NULL;
CREATE INDEX recipe_by_name ON recipe (name);
CREATE INDEX recipe_deleted ON recipe (deleted_epoch_ms) WHERE deleted_epoch_ms IS NOT NULL;

CREATE TABLE recipe_version (
    recipe_id         TEXT    NOT NULL REFERENCES recipe (id),
    number            INTEGER NOT NULL CHECK (number >= 1),
    made_for          TEXT    NOT NULL CHECK (made_for IN ('own', 'sale')),
    formula_text      TEXT    NOT NULL CHECK (length(formula_text) >= 1),
    why               TEXT    NOT NULL CHECK (length(why) <= 2000),
    saved_epoch_ms    BIGINT  NOT NULL,
    made_epoch_ms     BIGINT,
    PRIMARY KEY (recipe_id, number)
);

CREATE TABLE draft (
    id                TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    recipe_id         TEXT    UNIQUE REFERENCES recipe (id),
    based_on          INTEGER NOT NULL CHECK (based_on >= 0),
    form_json         TEXT    NOT NULL CHECK (length(form_json) <= 2000000),
    revision          INTEGER NOT NULL CHECK (revision >= 1),
    changed_epoch_ms  BIGINT  NOT NULL
);

CREATE TABLE mould (
    id                     TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name                   TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort              TEXT    NOT NULL,
    kind                   TEXT    NOT NULL CHECK (kind IN ('loaf', 'slab', 'tube', 'cavities', 'unmeasured')),
    length_micrometres     BIGINT  CHECK (length_micrometres > 0),
    length_unit            TEXT    CHECK (length_unit IN ('mm', 'cm', 'in')),
    width_micrometres      BIGINT  CHECK (width_micrometres > 0),
    width_unit             TEXT    CHECK (width_unit IN ('mm', 'cm', 'in')),
    height_micrometres     BIGINT  CHECK (height_micrometres > 0),
    height_unit            TEXT    CHECK (height_unit IN ('mm', 'cm', 'in')),
    diameter_micrometres   BIGINT  CHECK (diameter_micrometres > 0),
    diameter_unit          TEXT    CHECK (diameter_unit IN ('mm', 'cm', 'in')),
    cavity_count           INTEGER CHECK (cavity_count BETWEEN 1 AND 10000),
    cavity_microlitres     BIGINT  CHECK (cavity_microlitres > 0),
    cavity_unit            TEXT    CHECK (cavity_unit IN ('ml', 'l')),
    water_fill_milligrams  BIGINT  CHECK (water_fill_milligrams > 0),
    water_fill_unit        TEXT    CHECK (water_fill_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    usual_milligrams       BIGINT  CHECK (usual_milligrams > 0),
    usual_unit             TEXT    CHECK (usual_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    usual_recipe_id        TEXT,
    usual_version          INTEGER,
    thickness_micrometres  BIGINT  CHECK (thickness_micrometres > 0),
    thickness_unit         TEXT    CHECK (thickness_unit IN ('mm', 'cm', 'in')),
    across_micrometres     BIGINT  CHECK (across_micrometres > 0),
    across_unit            TEXT    CHECK (across_unit IN ('mm', 'cm', 'in')),
    blade_micrometres      BIGINT  CHECK (blade_micrometres >= 0),
    blade_unit             TEXT    CHECK (blade_unit IN ('mm', 'cm', 'in')),
    ends_micrometres       BIGINT  CHECK (ends_micrometres >= 0),
    ends_unit              TEXT    CHECK (ends_unit IN ('mm', 'cm', 'in')),
    trim_micrometres       BIGINT  CHECK (trim_micrometres >= 0),
    trim_unit              TEXT    CHECK (trim_unit IN ('mm', 'cm', 'in')),
    changed_epoch_ms       BIGINT  NOT NULL,
    removed_epoch_ms       BIGINT,
    FOREIGN KEY (usual_recipe_id, usual_version) REFERENCES recipe_version (recipe_id, number),
    CHECK ((kind IN ('loaf', 'slab')) = (width_micrometres IS NOT NULL)),
    CHECK ((kind IN ('loaf', 'slab')) = (height_micrometres IS NOT NULL)),
    CHECK ((kind IN ('loaf', 'slab', 'tube')) = (length_micrometres IS NOT NULL)),
    CHECK ((kind = 'tube') = (diameter_micrometres IS NOT NULL)),
    CHECK ((kind = 'cavities') = (cavity_count IS NOT NULL)),
    CHECK ((kind = 'cavities') = (cavity_microlitres IS NOT NULL)),
    CHECK (kind <> 'unmeasured' OR water_fill_milligrams IS NOT NULL OR usual_milligrams IS NOT NULL),
    CHECK ((usual_milligrams IS NULL) = (usual_recipe_id IS NULL)),
    CHECK ((usual_recipe_id IS NULL) = (usual_version IS NULL)),
    CHECK ((length_micrometres IS NULL) = (length_unit IS NULL)),
    CHECK ((width_micrometres IS NULL) = (width_unit IS NULL)),
    CHECK ((height_micrometres IS NULL) = (height_unit IS NULL)),
    CHECK ((diameter_micrometres IS NULL) = (diameter_unit IS NULL)),
    CHECK ((cavity_microlitres IS NULL) = (cavity_unit IS NULL)),
    CHECK ((water_fill_milligrams IS NULL) = (water_fill_unit IS NULL)),
    CHECK ((usual_milligrams IS NULL) = (usual_unit IS NULL)),
    CHECK ((thickness_micrometres IS NULL) = (thickness_unit IS NULL)),
    CHECK ((across_micrometres IS NULL) = (across_unit IS NULL)),
    CHECK ((blade_micrometres IS NULL) = (blade_unit IS NULL)),
    CHECK ((ends_micrometres IS NULL) = (ends_unit IS NULL)),
    CHECK ((trim_micrometres IS NULL) = (trim_unit IS NULL))
);
CREATE INDEX mould_by_usual ON mould (usual_recipe_id, usual_version);

CREATE TABLE balance (
    id                   TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name                 TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort            TEXT    NOT NULL,
    capacity_milligrams  BIGINT  NOT NULL CHECK (capacity_milligrams > 0),
    capacity_unit        TEXT    NOT NULL CHECK (capacity_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    step_milligrams      BIGINT  NOT NULL CHECK (step_milligrams >= 1),
    step_unit            TEXT    NOT NULL CHECK (step_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    accuracy_class       TEXT    CHECK (accuracy_class IN ('I', 'II', 'III', 'IIII')),
    changed_epoch_ms     BIGINT  NOT NULL,
    removed_epoch_ms     BIGINT,
    CHECK (capacity_milligrams >= step_milligrams)
);

CREATE TABLE jug (
    id                   TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    name                 TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
    name_sort            TEXT    NOT NULL,
    empty_milligrams     BIGINT  NOT NULL CHECK (empty_milligrams > 0),
    empty_unit           TEXT    NOT NULL CHECK (empty_unit IN ('mg', 'g', 'kg', 'oz', 'lb')),
    used_for             TEXT    NOT NULL CHECK (used_for IN ('lye jug', 'oil pot', 'portion jug')),
    changed_epoch_ms     BIGINT  NOT NULL,
    removed_epoch_ms     BIGINT
);

CREATE TABLE material (
    id                   TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    key                  TEXT    NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
    key_sort             TEXT    NOT NULL,
    kind                 TEXT    NOT NULL CHECK (length(kind) <= 200),
    material_text        TEXT    NOT NULL CHECK (length(material_text) >= 1),
    changed_epoch_ms     BIGINT  NOT NULL,
    removed_epoch_ms     BIGINT
);
CREATE UNIQUE INDEX material_by_key ON material (key) WHERE removed_epoch_ms IS NULL;

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

INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (0, NULL, '<< Flyway Schema Creation >>', 'SCHEMA', '"workshop_1"', NULL, 'postgres', '2026-11-28 22:57:40.753082', 0, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (1, '1', 'what is kept', 'SQL', 'V1__what_is_kept.sql', 1558161802, 'postgres', '2026-11-28 22:57:40.787971', 45, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (2, '2', 'what was made stays', 'SQL', 'V2__what_was_made_stays.sql', -901060262, 'postgres', '2026-11-28 22:57:40.856712', 6, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (3, '3', 'stores', 'SQL', 'V3__stores.sql', 112192518, 'postgres', '2026-11-28 22:57:40.873017', 30, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (4, '4', 'the ledger only grows', 'SQL', 'V4__the_ledger_only_grows.sql', -173740154, 'postgres', '2026-11-28 22:57:40.925083', 4, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (5, '5', 'who may touch the books', 'SQL', 'V5__who_may_touch_the_books.sql', -1849198147, 'postgres', '2026-11-28 22:57:40.936781', 16, 't');

INSERT INTO workshop (id, name, units, degrees, currency, market, paper, sodium_purity, potassium_purity, hold_back, changed_epoch_ms) VALUES (1, 'Gannet Stair Soap', 'grams', 'celsius', 'GBP', 'gb', 'a4', '98.5 ± 0.5', NULL, '1 %', 1795906657929);

INSERT INTO photograph (sha256, size_bytes, kept_epoch_ms) VALUES ('bf697562615787bba44b517ed5b52f2b7c311f4f4cd3a175a57af0bf5c9e70fa', 7, 1795906658234);

INSERT INTO recipe (id, name, name_sort, search_text, newest_version, photograph_sha256, added_epoch_ms, changed_epoch_ms, deleted_epoch_ms) VALUES ('01a22460-df70-73de-af29-17fd08f0e1e4', 'Tideline', '0067005c00560058005f005c00610058000000010001000100010001000100010001000000020001000100010001000100010001', 'tideline
olive-virgin coconut
', 2, 'bf697562615787bba44b517ed5b52f2b7c311f4f4cd3a175a57af0bf5c9e70fa', 1795906658143, 1795906658239, NULL);
INSERT INTO recipe (id, name, name_sort, search_text, newest_version, photograph_sha256, added_epoch_ms, changed_epoch_ms, deleted_epoch_ms) VALUES ('01a22460-dfaa-754a-b11e-4645d1abc8f1', 'Rope Walk Charcoal', '0065006200630058006a0053005f005e0055005b00530065005500620053005f000000010001000100010077000100010001000100770001000100010001000100010001000100000002000100010001000200010001000100020001000100010001000100010001', 'rope walk charcoal
olive-virgin coconut
', 1, NULL, 1795906658218, 1795906658218, 1795906658225);

INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22460-df70-73de-af29-17fd08f0e1e4', 1, 'own', 'recipe: Tideline
version: 1
use: own
notes: "Sea-salt bar.\n''; DROP TABLE recipe; -- 石鹸 \\ \" \t end"
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 5 %
water: 33 % lye
', '', 1795906658143, 1795906658182);
INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22460-df70-73de-af29-17fd08f0e1e4', 2, 'own', 'recipe: Tideline
version: 2
use: own
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 6 %
water: 33 % lye
', 'milder', 1795906658195, NULL);
INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22460-dfaa-754a-b11e-4645d1abc8f1', 1, 'own', 'recipe: Rope Walk Charcoal
version: 1
use: own
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 5 %
water: 33 % lye
', '', 1795906658218, NULL);

INSERT INTO draft (id, recipe_id, based_on, form_json, revision, changed_epoch_ms) VALUES ('01a22460-dfc6-70d4-ae9e-8425f5d0268f', '01a22460-df70-73de-af29-17fd08f0e1e4', 2, '{"superfat":"7,5","x":"\u0000 <script>"}', 1, 1795906658246);
INSERT INTO draft (id, recipe_id, based_on, form_json, revision, changed_epoch_ms) VALUES ('01a22460-dfcc-72eb-b069-2432262f80e7', NULL, 0, '{}', 1, 1795906658252);

INSERT INTO mould (id, name, name_sort, kind, length_micrometres, length_unit, width_micrometres, width_unit, height_micrometres, height_unit, diameter_micrometres, diameter_unit, cavity_count, cavity_microlitres, cavity_unit, water_fill_milligrams, water_fill_unit, usual_milligrams, usual_unit, usual_recipe_id, usual_version, thickness_micrometres, thickness_unit, across_micrometres, across_unit, blade_micrometres, blade_unit, ends_micrometres, ends_unit, trim_micrometres, trim_unit, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e014-713e-80bf-66facd6764d0', 'Long loaf', '005f00620061005a005f0062005300590000000100010001000100770001000100010001000000020001000100010001000100010001', 'loaf', 304800, 'in', 80000, 'cm', 65000, 'mm', NULL, NULL, NULL, NULL, NULL, NULL, NULL, 1520000, 'g', '01a22460-df70-73de-af29-17fd08f0e1e4', 1, 25000, 'mm', NULL, NULL, 1000, 'mm', NULL, NULL, NULL, NULL, 1795906658333, NULL);

INSERT INTO balance (id, name, name_sort, capacity_milligrams, capacity_unit, step_milligrams, step_unit, accuracy_class, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e046-7645-b21a-e1529ff5eeee', 'fine', '0059005c006100580000000100010001000100000001000100010001', 200000, 'g', 10, 'g', 'II', 1795906658377, NULL);

INSERT INTO jug (id, name, name_sort, empty_milligrams, empty_unit, used_for, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e052-7002-b290-95e591b5f746', 'white jug', '006a005b005c00670058005d0068005a0000000100010001000100010077000100010001000000010001000100010001000100010001', 311845, 'oz', 'lye jug', 1795906658387, NULL);

INSERT INTO material (id, key, key_sort, kind, material_text, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e063-77d1-9e31-bc8f9b59ad17', 'house-olive', '005b00620068006600580062005f005c0069005800000001000100010001000100e300010001000100010001000000010001000100010001000300010001000100010001', 'oil', 'recipe: material
version: 1
use: own
oils:
  olive-virgin: rest
alkali: sodium
superfat: 5 %
water: 33 % lye
materials:
  house-olive:
    kind: oil
    saponification value: 189.5 ± 1.0 mg KOH/g
    source: certificate L-204
', 1795906658412, NULL);

INSERT INTO person (id, name, name_sort, role, added_epoch_ms, removed_epoch_ms) VALUES ('00000000-0000-7000-8000-000000000001', 'The maker', '0067005b005800600053005e005800650000000100010001007700010001000100010001000000020001000100010001000100010001', 'maker', 1795906657933, NULL);
INSERT INTO person (id, name, name_sort, role, added_epoch_ms, removed_epoch_ms) VALUES ('01a22460-dfcc-72ec-8095-eec59168ff2c', 'Wenna', '006a0058006100610053000000010001000100010001000000020001000100010001', 'helper', 1795906658283, NULL);

INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (1, 1795906658457, '00000000-0000-7000-8000-000000000001', NULL, 'lot', '{"best before":"2027-11-25","code":"26-0001","currency":"GBP","item":"01a22460-e07c-724f-9935-ca5a950a451c","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","notes":"white, mild","price":1895,"received":"2026-11-25","status":"usable","supplier lot":"NQ-118"}', 'b5022b7b5dc0eea6bcf5fe942ce6777df9f2b3e06712a70ff31b54c38b55a797');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (2, 1795906658457, '00000000-0000-7000-8000-000000000001', NULL, 'stock move', '{"kind":"receipt","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","milligrams":5000000}', 'e602df7515bf3b0e89d69899983a820101f23b7e69dc9e51dc75cc9844583f06');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (3, 1795906658675, '00000000-0000-7000-8000-000000000001', NULL, 'stock move', '{"kind":"use","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","milligrams":-350000,"purpose":"Tideline"}', '8bd7e6811af5f742c8c8cf32a47a2db34078272a2fa6a493e0e0fab72c8061a2');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (4, 1795906658691, '00000000-0000-7000-8000-000000000001', NULL, 'stock move', '{"corrects":3,"kind":"use","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","milligrams":350000,"purpose":"Tideline","why":"weighed the other jug"}', '07623d3dd71bd02df90098af7f3c7e5fd6d88825bc95ea13fd7ed8e378fe0987');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (5, 1795906658713, '00000000-0000-7000-8000-000000000001', NULL, 'lot', '{"best before":"2027-11-25","certificate":"recipe: material\nversion: 1\nuse: own\noils:\n  olive-virgin: rest\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nmaterials:\n  house-olive:\n    kind: oil\n    saponification value: 189.5 ± 1.0 mg KOH/g\n    source: certificate L-204\n","code":"26-0001","currency":"GBP","item":"01a22460-e07c-724f-9935-ca5a950a451c","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","notes":"white, mild","price":1895,"received":"2026-11-25","status":"usable","supplier lot":"NQ-118"}', '4dc3c770ad94d606967d0ba66f068c845dad1b714cd01e402b9ee63bbfba1c9e');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (6, 1795906658745, '00000000-0000-7000-8000-000000000001', NULL, 'lot', '{"best before":"2027-11-25","code":"26-0002","currency":"GBP","item":"01a22460-e08c-762a-8993-4bff481178da","lot":"01a22460-e1ba-7593-805d-c7d5ad03e18a","notes":"white, mild","price":1895,"received":"2026-11-25","status":"usable","supplier lot":"NQ-118"}', 'cb25195230e086705820ba24e5890801a7ac15e9a9539004f36715d239ab24b7');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (7, 1795906658745, '00000000-0000-7000-8000-000000000001', NULL, 'stock move', '{"kind":"receipt","lot":"01a22460-e1ba-7593-805d-c7d5ad03e18a","pieces":200}', '45c7ef83cca7d824a910b7862ed7d561e32763d40035d3b6724265b7b6ff94f5');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (8, 1795906658756, '00000000-0000-7000-8000-000000000001', NULL, 'stock move', '{"kind":"count","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","milligrams":-10000,"why":"what stuck to the scoop; ''); DROP TABLE lot; --"}', '23259de5292d14fb509d93b4e04dbf9d49cf6832a1321994147e48250d205311');
INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256) VALUES (9, 1795906658770, '00000000-0000-7000-8000-000000000001', NULL, 'lot', '{"best before":"2027-11-25","code":"26-0001","currency":"GBP","item":"01a22460-e07c-724f-9935-ca5a950a451c","lot":"01a22460-e0ab-70e0-97a1-09a271a67371","notes":"white, mild","price":1895,"received":"2026-11-25","status":"quarantine","supplier lot":"NQ-118"}', 'cdaf298f36529a411287f155062503f1abb63f05d3e522470aa7f93b0f3b1fdc');

INSERT INTO ledger_once (token, number) VALUES ('form-0001', 2);
INSERT INTO ledger_once (token, number) VALUES ('form-0002', 3);


INSERT INTO stock_item (id, name, name_sort, kind, measure, material_key, inci, cas, species, part, product_code, certificate_version, supplier_id, reorder_milligrams, reorder_unit, reorder_pieces, notes, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e07c-724f-9935-ca5a950a451c', 'Coconut oil', '00550062005500620061006800670062005c005f00000001000100010001000100010001007700010001000100000002000100010001000100010001000100010001', 'oil', 'mass', 'coconut', '', '', '', '', '', '', NULL, NULL, NULL, NULL, '', 1795906658438, NULL);
INSERT INTO stock_item (id, name, name_sort, kind, measure, material_key, inci, cas, species, part, product_code, certificate_version, supplier_id, reorder_milligrams, reorder_unit, reorder_pieces, notes, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22460-e08c-762a-8993-4bff481178da', 'Wrappers', '006a0065005300630063005800650066000000010001000100010001000100010001000000020001000100010001000100010001', 'packaging', 'pieces', NULL, '', '', '', '', '', '', NULL, NULL, NULL, NULL, '', 1795906658447, NULL);


INSERT INTO lot (id, item_id, own_code, supplier_id, supplier_lot, received_day, opened_day, best_before_day, price_minor, price_currency, status, certificate_text, notes, entry_number) VALUES ('01a22460-e0ab-70e0-97a1-09a271a67371', '01a22460-e07c-724f-9935-ca5a950a451c', '26-0001', NULL, 'NQ-118', '2026-11-25', NULL, '2027-11-25', 1895, 'GBP', 'quarantine', NULL, 'white, mild', 9);
INSERT INTO lot (id, item_id, own_code, supplier_id, supplier_lot, received_day, opened_day, best_before_day, price_minor, price_currency, status, certificate_text, notes, entry_number) VALUES ('01a22460-e1ba-7593-805d-c7d5ad03e18a', '01a22460-e08c-762a-8993-4bff481178da', '26-0002', NULL, 'NQ-118', '2026-11-25', NULL, '2027-11-25', 1895, 'GBP', 'usable', NULL, 'white, mild', 6);

INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why) VALUES (2, '01a22460-e0ab-70e0-97a1-09a271a67371', 'receipt', 5000000, NULL, NULL, '', '', '');
INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why) VALUES (3, '01a22460-e0ab-70e0-97a1-09a271a67371', 'use', -350000, NULL, NULL, 'Tideline', '', '');
INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why) VALUES (4, '01a22460-e0ab-70e0-97a1-09a271a67371', 'use', 350000, NULL, 3, 'Tideline', '', 'weighed the other jug');
INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why) VALUES (7, '01a22460-e1ba-7593-805d-c7d5ad03e18a', 'receipt', NULL, 200, NULL, '', '', '');
INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why) VALUES (8, '01a22460-e0ab-70e0-97a1-09a271a67371', 'count', -10000, NULL, NULL, '', '', 'what stuck to the scoop; ''); DROP TABLE lot; --');

INSERT INTO lot_held (lot_id, since_number) VALUES ('01a22460-e0ab-70e0-97a1-09a271a67371', 2);
INSERT INTO lot_held (lot_id, since_number) VALUES ('01a22460-e1ba-7593-805d-c7d5ad03e18a', 7);



INSERT INTO device (id, person_id, name, let_in_by, added_epoch_ms, removed_epoch_ms) VALUES ('01a22460-dffd-74ca-849d-378acfbaeb62', '01a22460-dfcc-72ec-8095-eec59168ff2c', 'telephone', 'code', 1795906658299, NULL);


INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-deac-71cc-ac58-56d4271eaf30', 1795906657964, '00000000-0000-7000-8000-000000000001', NULL, 'settings', '1', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-df7f-71d3-baab-0b724d92cd84', 1795906658175, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-df70-73de-af29-17fd08f0e1e4', 1, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-df89-75cc-b07e-1721145a17c2', 1795906658185, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-df70-73de-af29-17fd08f0e1e4', 1, 'made');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-dfa3-7713-a832-bc13144dae49', 1795906658211, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-df70-73de-af29-17fd08f0e1e4', 2, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-dfac-71b8-a69f-831208be79ea', 1795906658220, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-dfaa-754a-b11e-4645d1abc8f1', 1, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-dfb4-71ee-a07d-3cbb37ae2698', 1795906658228, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-dfaa-754a-b11e-4645d1abc8f1', NULL, 'removed');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-dfc3-7741-9cde-22c0e560bc2f', 1795906658243, '00000000-0000-7000-8000-000000000001', NULL, 'recipe', '01a22460-df70-73de-af29-17fd08f0e1e4', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-dfee-76d5-a2d9-29486c487ca9', 1795906658286, '00000000-0000-7000-8000-000000000001', NULL, 'person', '01a22460-dfcc-72ec-8095-eec59168ff2c', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e000-7234-84e3-bc412c4b8768', 1795906658304, '00000000-0000-7000-8000-000000000001', NULL, 'device', '01a22460-dffd-74ca-849d-378acfbaeb62', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e037-73eb-9646-24f0c072e1a1', 1795906658359, '00000000-0000-7000-8000-000000000001', NULL, 'mould', '01a22460-e014-713e-80bf-66facd6764d0', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e04d-7642-b5a5-b6ff034db887', 1795906658381, '00000000-0000-7000-8000-000000000001', NULL, 'balance', '01a22460-e046-7645-b21a-e1529ff5eeee', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e055-700d-aa31-791630c01ff7', 1795906658389, '00000000-0000-7000-8000-000000000001', NULL, 'jug', '01a22460-e052-7002-b290-95e591b5f746', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e077-74c6-95fe-775fda318d40', 1795906658424, '00000000-0000-7000-8000-000000000001', NULL, 'material', '01a22460-e063-77d1-9e31-bc8f9b59ad17', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e08a-74be-b01f-6355a5667752', 1795906658442, '00000000-0000-7000-8000-000000000001', NULL, 'stocked material', '01a22460-e07c-724f-9935-ca5a950a451c', NULL, 'kept');
INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed) VALUES ('01a22460-e08f-713a-bf99-063454fec21f', 1795906658447, '00000000-0000-7000-8000-000000000001', NULL, 'stocked material', '01a22460-e08c-762a-8993-4bff481178da', NULL, 'kept');
