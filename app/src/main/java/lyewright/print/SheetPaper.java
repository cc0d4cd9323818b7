package lyewright.print;

import lyewright.makingsheet.MakingSheet;
import lyewright.template.Templates;

/** The making sheet on paper. */
public final class SheetPaper {

    private static final String TEMPLATE = "print/sheet.jte";

    /** The heading to which the only link of a sheet leads. */
    public static final String MORE = "How sure, and more to know";

    private SheetPaper() {}

    /**
     * Prints a sheet. A sheet that is not to be made is crossed on every page and says why.
     *
     * @param sheet what to make
     * @param order on which paper, for whom, when
     * @return a PDF
     */
    public static byte[] pdf(MakingSheet sheet, PaperOrder order) {
        SheetLeaf leaf = SheetLeaf.of(sheet, order);
        String page = page(leaf);
        String whole = Typeface.has(page) ? page : page(leaf.lackingLetters());
        return Press.pdf(whole, document -> {
            Links.tell(document, MORE);
            if (leaf.stopped()) {
                Cross.over(document);
            }
        });
    }

    private static String page(SheetLeaf leaf) {
        return Xhtml.clean(Templates.render(TEMPLATE, leaf));
    }
}
