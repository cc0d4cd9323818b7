package lyewright.material;

import java.util.regex.Pattern;

/**
 * What a material is called on paper. Any part may be empty where nothing was found.
 *
 * @param inci its INCI name
 * @param inciSource where that was seen
 * @param cas its CAS number or numbers
 * @param casSource where that was seen
 * @param ec its EC number
 * @param sodiumSoap INCI name of its sodium soap, oils only
 * @param potassiumSoap INCI name of its potassium soap, oils only
 */
public record Names(
        String inci,
        String inciSource,
        String cas,
        String casSource,
        String ec,
        String sodiumSoap,
        String potassiumSoap) {

    /** Nothing known. */
    public static final Names NONE = new Names("", "", "", "", "", "", "");

    /** Behind a space, so that what stands in brackets says nothing of the name. */
    private static final Pattern PROPER = Pattern.compile("^[^(,]* \\p{Lu}\\p{Ll}");

    /**
     * A common name within a sentence: its first letter small, unless the name is written in capitals or as a key, or is a proper one,
     * in which another word begins with a capital.
     *
     * @param name such as {@code Olive oil (virgin)}
     * @return such as {@code olive oil (virgin)}; {@code DNA oil}, {@code house-olive} and {@code Sea Breeze} as they are
     */
    public static String inSentence(String name) {
        return name.length() > 1
                        && Character.isLowerCase(name.charAt(1))
                        && !PROPER.matcher(name).find()
                ? Character.toLowerCase(name.charAt(0)) + name.substring(1)
                : name;
    }
}
