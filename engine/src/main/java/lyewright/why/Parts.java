package lyewright.why;

import java.util.Optional;
import lyewright.material.AcidSalt;
import lyewright.material.Additive;
import lyewright.material.Tables;
import lyewright.why.Term.Given;

/**
 * What a gram of an addition consists of beside its water: salt, fat, acid and the rest. Where a material's parts come to more
 * than it is, water stays and the others give way.
 */
final class Parts {

    /** Makeups are printed to so many parts of one; closer than this, acid and water are all there is. */
    private static final double ROUNDING = 2e-4;

    private final Tables tables;
    private final Additive material;
    private final Additive.Makeup makeup;
    private final Term salt;
    private final Term fat;
    private final Term acid;
    private final Term rest;

    Parts(Tables tables, Additive material) {
        this.tables = tables;
        this.material = material;
        this.makeup = material.makeup();
        Term published = makeup.salt() > 0 ? Contents.salt(material) : nothing();
        Term free = hasFat() ? Contents.fatShare(material) : nothing();
        Term sour = makeup.acidMolesPerGram() > 0 ? acidShare(published, free) : nothing();
        Term left = room(published, free, sour);
        double over = value(left);
        if (value(sour) > 0 && Math.abs(over) < ROUNDING) {
            this.salt = published;
            this.fat = free;
            this.acid = room(published, free, nothing());
            this.rest = nothing();
        } else if (over >= 0) {
            this.salt = published;
            this.fat = free;
            this.acid = sour;
            this.rest = left;
        } else {
            Term fitting = fitting(sum(published, free, sour));
            this.salt = value(published) > 0 ? published.times(fitting) : published;
            this.fat = value(free) > 0 ? free.times(fitting) : free;
            this.acid = value(sour) > 0 ? sour.times(fitting) : sour;
            this.rest = nothing();
        }
    }

    private static Term nothing() {
        return Term.number(0);
    }

    private static boolean isNothing(Term term) {
        return term instanceof Term.Plain number && number.number() == 0;
    }

    static double value(Term term) {
        return term.value(new Reckoning(Reckoning.ALL));
    }

    /** Fat without a saponification value does not react and stays in its seed. */
    private boolean hasFat() {
        return makeup.fatSaponificationValue() > 0 && makeup.fat() > 0;
    }

    /** What water and these leave of a gram. */
    private Term room(Term... taken) {
        Term room = Term.number(1);
        if (makeup.water() > 0) {
            room = room.minus(Contents.water(material));
        }
        for (Term term : taken) {
            room = isNothing(term) ? room : room.minus(term);
        }
        return room;
    }

    private static Term sum(Term... terms) {
        Term sum = nothing();
        for (Term term : terms) {
            sum = isNothing(term) ? sum : isNothing(sum) ? term : sum.plus(term);
        }
        return sum;
    }

    private Term fitting(Term all) {
        return Term.call(Function.MAX, nothing(), room())
                .over(all)
                .as(
                        "fitting " + Labels.of(material),
                        "",
                        "what its parts are lessened by, since they come to more than it is");
    }

    /** By the molar mass of the acid; where its substance is not in the tables, all that is not water, salt or fat. */
    private Term acidShare(Term published, Term free) {
        Optional<Tables.Acid> substance = tables.acidCalled(makeup.acidName())
                .or(() -> tables.acidSalt(makeup.acidName()).flatMap(names -> tables.acidCalled(names.weighedAs())));
        return substance.isPresent()
                ? bySubstance(substance.get())
                : Term.call(Function.MAX, nothing(), room(published, free));
    }

    private Term bySubstance(Tables.Acid substance) {
        Given molarMass = new Given(
                "M of " + substance.name(),
                substance.molarMass(),
                "g/mol",
                "molar mass of " + substance.name(),
                substance.source());
        Given protons = new Given(
                "alkali for a " + substance.name(),
                substance.protons(),
                "",
                "how many alkalis a molecule takes",
                substance.source());
        return Contents.acid(tables, material).times(molarMass).over(protons);
    }

    /** The names of its acid and of that acid's salts. */
    AcidSalt names() {
        return tables.acidSalt(makeup.acidName())
                .orElseThrow(() -> new IllegalStateException("the tables lack the salts of " + makeup.acidName()));
    }

    Term salt() {
        return salt;
    }

    Term fat() {
        return fat;
    }

    Term acid() {
        return acid;
    }

    Term rest() {
        return rest;
    }

    /** What the parts come to, for comparing. */
    boolean mostlySalt() {
        return value(salt) > value(rest);
    }

    boolean nothingElse() {
        return value(salt) + value(fat) + value(acid) == 0;
    }
}
