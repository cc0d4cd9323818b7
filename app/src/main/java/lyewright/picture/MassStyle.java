package lyewright.picture;

/** How the parts of a batch are drawn: what becomes what looks alike on both sides. */
enum MassStyle {
    SOAP("f-full", Texture.PLAIN),
    GLYCEROL("f-mid", Texture.PLAIN),
    OIL_LEFT("f-mid", Texture.CLIMBING),
    UNSAPONIFIABLE("f-soft", Texture.FALLING),
    ALKALI("f-none", Texture.CROSSED),
    FREE_ALKALI("f-stop", Texture.ALARM),
    SALT("f-none", Texture.DOTTED),
    SOLIDS("f-none", Texture.CLOSE),
    REST("f-soft", Texture.STANDING),
    LIQUIDS("f-soft", Texture.DOTTED),
    WATER("f-soft", Texture.PLAIN),
    DRIES("f-clear o-dash", Texture.PLAIN);

    final String style;
    final Texture texture;

    MassStyle(String style, Texture texture) {
        this.style = style;
        this.texture = texture;
    }

    boolean water() {
        return this == WATER || this == DRIES || this == LIQUIDS;
    }

    /** What alkali and oils are and become. */
    boolean reacts() {
        return switch (this) {
            case SOAP, GLYCEROL, OIL_LEFT, UNSAPONIFIABLE, ALKALI, FREE_ALKALI -> true;
            case SALT, SOLIDS, REST, LIQUIDS, WATER, DRIES -> false;
        };
    }
}
