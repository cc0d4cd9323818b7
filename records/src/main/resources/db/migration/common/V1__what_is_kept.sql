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
