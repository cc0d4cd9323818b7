package lyewright.records.store;

import lyewright.records.Place;

/** Migrations run in any case, also where opening would see that there is nothing to do. */
public final class Migrating {

    private Migrating() {}

    /** Brings a place to the newest schema, holding what was done before against the migrations. */
    public static void toNewest(Place place) {
        Schema.migrate(
                place instanceof Place.Folder folder
                        ? new SqliteDialect(folder.database())
                        : new PostgresDialect((Place.Server) place),
                Schema.NEWEST);
    }
}
