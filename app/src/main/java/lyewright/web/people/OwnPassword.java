package lyewright.web.people;

import lyewright.measure.Outcome;
import lyewright.records.people.Person;
import lyewright.web.Shop;

/** Asks whoever is at a device for their own password: whoever found it lying about is not yet the person whose it is. */
final class OwnPassword {

    private static final int MOST_TRIES = 10;

    private final Shop shop;
    private final Guesses ofPerson;

    OwnPassword(Shop shop) {
        this.shop = shop;
        this.ofPerson = new Guesses(MOST_TRIES, shop.clock());
    }

    /** Whether somebody typed the password that is theirs. */
    Outcome<Boolean> isTyped(Person person, String typed) {
        if (!ofPerson.mayTry(person.id())) {
            return Outcome.refused("too many passwords were tried", "wait a quarter of an hour");
        }
        boolean right = shop.records()
                .passwords()
                .check(person.name(), typed)
                .filter(found -> found.id().equals(person.id()))
                .isPresent();
        if (!right) {
            return Outcome.refused(
                    "this is not your password as it is now", "type it again, or ask a maker for a new one");
        }
        ofPerson.right(person.id());
        return Outcome.ok(true);
    }
}
