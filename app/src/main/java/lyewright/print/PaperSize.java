package lyewright.print;

/** The sizes of paper that printers hold. */
public enum PaperSize {
    /** 210 by 297 mm. */
    A4("210mm 297mm"),
    /** 8.5 by 11 inches. */
    LETTER("8.5in 11in");

    private final String measures;

    PaperSize(String measures) {
        this.measures = measures;
    }

    /** Width and height as a style sheet writes them. */
    public String measures() {
        return measures;
    }
}
