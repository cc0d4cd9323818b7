package lyewright.web;

/** The parts of the application that its header leads to. */
public enum Section {
    RECIPES("Recipes", "/recipes"),
    MAKE("Make", "/make"),
    STORES("Stores", "/stores"),
    SETTINGS("Settings", "/settings");

    private final String label;
    private final String address;

    Section(String label, String address) {
        this.label = label;
        this.address = address;
    }

    /** What the header calls it. */
    public String label() {
        return label;
    }

    /** Where it begins. */
    public String address() {
        return address;
    }
}
