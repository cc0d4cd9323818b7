package lyewright.formula;

/** Where the rules put what they find. */
interface Report {

    /**
     * Takes one problem.
     *
     * @param path where it is
     * @param what what is wrong
     * @param remedy what to do about it
     */
    void add(String path, String what, String remedy);
}
