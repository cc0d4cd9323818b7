package lyewright.web.people;

import io.javalin.http.Context;
import java.util.Optional;
import lyewright.records.people.Devices;
import lyewright.web.Admission;
import lyewright.web.Shop;
import lyewright.web.Visitor;

/** Says who asks, by what their device shows. It is looked up each time, so that who is shown the door is out at once. */
public final class Porter implements Admission {

    private final Shop shop;

    /**
     * The porter of a workshop.
     *
     * @param shop whose; devices belong to the maker's own, not to the demo workshop
     */
    public Porter(Shop shop) {
        this.shop = shop;
    }

    @Override
    public Optional<Visitor> visitor(Context ctx) {
        Devices devices = shop.always(false).records().devices();
        return DeviceCookie.shown(ctx).flatMap(devices::known).map(Visitor::at);
    }
}
