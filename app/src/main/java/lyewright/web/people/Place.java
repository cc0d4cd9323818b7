package lyewright.web.people;

import io.javalin.http.Context;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Where somebody tries from, for their tries to be counted. */
final class Place {

    private static final Set<String> HERE = Set.of("127.0.0.1", "[::1]", "[0:0:0:0:0:0:0:1]");

    private static final Pattern AN_ADDRESS = Pattern.compile("[0-9a-fA-F.:]{2,45}");

    /** What a subscriber is given, of which they may take any address (RFC 6177, section 2; RFC 7421): half of the sixteen bytes. */
    private static final int BYTES_OF_A_NETWORK = 8;

    private Place() {}

    /**
     * All that a web server in front passes on comes from this very computer; it says where it had it from, after whatever
     * whoever sent it wrote there.
     */
    static String of(Context ctx) {
        String from = ctx.ip();
        String said = Optional.ofNullable(ctx.header("X-Forwarded-For")).orElse("");
        String last = said.substring(said.lastIndexOf(',') + 1).strip();
        return network(HERE.contains(from) && AN_ADDRESS.matcher(last).matches() ? last : from);
    }

    /** An address as it is; of one of the sixth version the network it is in, for whoever has one has them all. */
    static String network(String address) {
        String bare = address.replaceAll("[\\[\\]]", "");
        if (!bare.contains(":") || !AN_ADDRESS.matcher(bare).matches()) {
            return address;
        }
        try {
            InetAddress read = InetAddress.getByName(bare);
            return read instanceof Inet6Address
                    ? HexFormat.ofDelimiter(":").formatHex(read.getAddress(), 0, BYTES_OF_A_NETWORK)
                    : read.getHostAddress();
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
