package lyewright.records.backup;

import lyewright.records.file.FileShelf;

/**
 * One part of a backup, as its manifest lists it.
 *
 * @param name its path in the file
 * @param rows how many rows, 0 for what is not a table
 * @param bytes its length unpacked
 * @param sha256 the digest of its content, hexadecimal
 */
record Part(String name, long rows, long bytes, String sha256) {

    private static final String TABLES = "tables/";
    private static final String LINES = ".jsonl";
    private static final String FILES = "files/";

    static String ofTable(String table) {
        return TABLES + table + LINES;
    }

    static String ofFile(String hash) {
        return FILES + hash;
    }

    boolean isFile() {
        return name.startsWith(FILES);
    }

    /** The name of the file it holds. */
    String hash() {
        return name.substring(FILES.length());
    }

    /** Whether it is a part that a backup may have at all. */
    boolean isKnown() {
        return isFile()
                ? FileShelf.isName(hash()) && hash().equals(sha256) && rows == 0
                : name.matches("tables/[a-z_]{1,40}\\.jsonl");
    }

    /** The table whose rows it holds. */
    String table() {
        return name.substring(TABLES.length(), name.length() - LINES.length());
    }
}
