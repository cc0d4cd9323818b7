package lyewright.material;

/**
 * What an acid among the additions is called before alkali meets it, and the salt it forms with each alkali. A part may be
 * empty where nothing was found.
 *
 * @param acid what its name has in it, such as {@code citric}
 * @param weighedAs its substance in the table of acids, which gives its molar mass; empty where its mass is not known apart
 *     from its material
 * @param fatty whether it counts as fatty matter: fatty acids and those of rosin
 * @param acidLabel the acid in words
 * @param acidInci the acid's INCI name
 * @param sodiumSalt its salt with sodium hydroxide, in words
 * @param sodiumInci that salt's INCI name
 * @param potassiumSalt its salt with potassium hydroxide, in words
 * @param potassiumInci that salt's INCI name
 * @param source where the names are from
 */
public record AcidSalt(
        String acid,
        String weighedAs,
        boolean fatty,
        String acidLabel,
        String acidInci,
        String sodiumSalt,
        String sodiumInci,
        String potassiumSalt,
        String potassiumInci,
        String source) {}
