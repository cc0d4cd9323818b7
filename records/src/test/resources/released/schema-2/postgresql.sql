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

INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (0, NULL, '<< Flyway Schema Creation >>', 'SCHEMA', '"workshop_1"', NULL, 'postgres', '2026-11-28 08:30:12.86585', 0, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (1, '1', 'what is kept', 'SQL', 'V1__what_is_kept.sql', 1558161802, 'postgres', '2026-11-28 08:30:13.312654', 511, 't');
INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, installed_on, execution_time, success) VALUES (2, '2', 'what was made stays', 'SQL', 'V2__what_was_made_stays.sql', -901060262, 'postgres', '2026-11-28 08:30:14.257516', 113, 't');

INSERT INTO workshop (id, name, units, degrees, currency, market, paper, sodium_purity, potassium_purity, hold_back, changed_epoch_ms) VALUES (1, 'Gannet Stair Soap', 'grams', 'celsius', 'GBP', 'gb', 'a4', '98.5 ± 0.5', NULL, '1 %', 1795854568935);

INSERT INTO photograph (sha256, size_bytes, kept_epoch_ms) VALUES ('bf697562615787bba44b517ed5b52f2b7c311f4f4cd3a175a57af0bf5c9e70fa', 7, 1795854574440);

INSERT INTO recipe (id, name, name_sort, search_text, newest_version, photograph_sha256, added_epoch_ms, changed_epoch_ms, deleted_epoch_ms) VALUES ('01a22146-1ca5-7076-8bc9-ab0dc8f6099a', 'Tideline', '0067005c00560058005f005c00610058000000010001000100010001000100010001000000020001000100010001000100010001', 'tideline
olive-virgin coconut
', 2, 'bf697562615787bba44b517ed5b52f2b7c311f4f4cd3a175a57af0bf5c9e70fa', 1795854572297, 1795854574572, NULL);
INSERT INTO recipe (id, name, name_sort, search_text, newest_version, photograph_sha256, added_epoch_ms, changed_epoch_ms, deleted_epoch_ms) VALUES ('01a22146-2217-7282-b9ef-59da6d5144ad', 'Rope Walk Charcoal', '0065006200630058006a0053005f005e0055005b00530065005500620053005f000000010001000100010077000100010001000100770001000100010001000100010001000100000002000100010001000200010001000100020001000100010001000100010001', 'rope walk charcoal
olive-virgin coconut
', 1, NULL, 1795854574103, 1795854574103, 1795854574222);

INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22146-1ca5-7076-8bc9-ab0dc8f6099a', 1, 'own', 'recipe: Tideline
version: 1
use: own
notes: "Sea-salt bar.\n''; DROP TABLE recipe; -- 石鹸 \\ \" \t end"
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 5 %
water: 33 % lye
', '', 1795854572297, 1795854573461);
INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22146-1ca5-7076-8bc9-ab0dc8f6099a', 2, 'own', 'recipe: Tideline
version: 2
use: own
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 6 %
water: 33 % lye
', 'milder', 1795854573567, NULL);
INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms, made_epoch_ms) VALUES ('01a22146-2217-7282-b9ef-59da6d5144ad', 1, 'own', 'recipe: Rope Walk Charcoal
version: 1
use: own
oils:
  olive-virgin: 70 %
  coconut: rest
alkali: sodium
superfat: 5 %
water: 33 % lye
', '', 1795854574103, NULL);

INSERT INTO draft (id, recipe_id, based_on, form_json, revision, changed_epoch_ms) VALUES ('01a22146-24ea-703c-986c-504bf2139bce', '01a22146-1ca5-7076-8bc9-ab0dc8f6099a', 2, '{"superfat":"7,5","x":"\u0000 <script>"}', 1, 1795854574826);
INSERT INTO draft (id, recipe_id, based_on, form_json, revision, changed_epoch_ms) VALUES ('01a22146-2556-75a5-a5bd-50d7f119712e', NULL, 0, '{}', 1, 1795854574934);

INSERT INTO mould (id, name, name_sort, kind, length_micrometres, length_unit, width_micrometres, width_unit, height_micrometres, height_unit, diameter_micrometres, diameter_unit, cavity_count, cavity_microlitres, cavity_unit, water_fill_milligrams, water_fill_unit, usual_milligrams, usual_unit, usual_recipe_id, usual_version, thickness_micrometres, thickness_unit, across_micrometres, across_unit, blade_micrometres, blade_unit, ends_micrometres, ends_unit, trim_micrometres, trim_unit, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22146-2620-7338-a63d-63d8770fe698', 'Long loaf', '005f00620061005a005f0062005300590000000100010001000100770001000100010001000000020001000100010001000100010001', 'loaf', 304800, 'in', 80000, 'cm', 65000, 'mm', NULL, NULL, NULL, NULL, NULL, NULL, NULL, 1520000, 'g', '01a22146-1ca5-7076-8bc9-ab0dc8f6099a', 1, 25000, 'mm', NULL, NULL, 1000, 'mm', NULL, NULL, NULL, NULL, 1795854575136, NULL);

INSERT INTO balance (id, name, name_sort, capacity_milligrams, capacity_unit, step_milligrams, step_unit, accuracy_class, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22146-2985-76bb-bc83-d9f4d975376f', 'fine', '0059005c006100580000000100010001000100000001000100010001', 200000, 'g', 10, 'g', 'II', 1795854576005, NULL);

INSERT INTO jug (id, name, name_sort, empty_milligrams, empty_unit, used_for, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22146-2a90-70e4-b920-a995a91fb661', 'white jug', '006a005b005c00670058005d0068005a0000000100010001000100010077000100010001000000010001000100010001000100010001', 311845, 'oz', 'lye jug', 1795854576272, NULL);

INSERT INTO material (id, key, key_sort, kind, material_text, changed_epoch_ms, removed_epoch_ms) VALUES ('01a22146-2c96-7552-b4e2-f2ca587d8b1d', 'house-olive', '005b00620068006600580062005f005c0069005800000001000100010001000100e300010001000100010001000000010001000100010001000300010001000100010001', 'oil', 'recipe: material
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
', 1795854576995, NULL);
