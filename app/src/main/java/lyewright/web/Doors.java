package lyewright.web;

import io.javalin.http.Context;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The doors that requests come by, and the names that they may call this computer. The desk's door is this computer's alone and asks
 * nobody who they are. By the network's door nothing is answered but to a device that was let in. Where everybody signs in there
 * is no desk.
 */
public final class Doors {

    private static final Pattern LOOPBACK =
            Pattern.compile("(localhost|127\\.0\\.0\\.1|\\[::1])(:[0-9]{1,5})?", Pattern.CASE_INSENSITIVE);

    private static final Pattern PORT = Pattern.compile(":[0-9]{1,5}$");

    private static final Pattern FIGURES =
            Pattern.compile("[0-9]+(\\.[0-9]+){3}|\\[?[0-9a-f.]*:[0-9a-f:.]*(%[^]]*)?]?");

    private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

    /** No request comes by it. */
    private static final int SHUT = -1;

    private final boolean signIn;
    private final Optional<URI> address;
    private final Set<String> ownNames = ownNames();

    private volatile int deskPort = SHUT;
    private volatile int networkPort = SHUT;

    /**
     * The doors of a server.
     *
     * @param signIn whether everybody signs in, at this computer too
     * @param address what others type to get here, where that is not this computer's own name
     */
    public Doors(boolean signIn, Optional<URI> address) {
        this.signIn = signIn;
        this.address = address;
    }

    /** The desk's door alone. */
    static Doors ofDesk() {
        return new Doors(false, Optional.empty());
    }

    /** Whether everybody signs in. */
    public boolean signIn() {
        return signIn;
    }

    /** What others type to get here, where that was said. */
    public Optional<URI> address() {
        return address;
    }

    void openedDesk(int port) {
        deskPort = port;
    }

    void opened(int port) {
        networkPort = port;
    }

    void shut() {
        networkPort = SHUT;
    }

    /**
     * Whether a request comes from the computer's own user: by the desk's door and no other. One whose door was shut, or whose
     * connection was cut off, before it was asked does not. Some systems let two doors of one number stand open, one of them towards the
     * network: then nobody is taken for the desk.
     */
    public boolean isDesk(Context ctx) {
        int port = ctx.req().getLocalPort();
        return !signIn && port > 0 && port == deskPort && port != networkPort;
    }

    /** Whether a request calls this computer by a name that is its own: a foreign name that somebody points here is not answered. */
    boolean answersTo(Context ctx, @Nullable String host) {
        if (host == null) {
            return false;
        }
        if (isDesk(ctx)) {
            return LOOPBACK.matcher(host).matches();
        }
        String name = PORT.matcher(host).replaceFirst("").toLowerCase(Locale.ROOT);
        Optional<InetAddress> local = literal(ctx.req().getLocalAddr());
        return (literal(name).isPresent() && literal(name).equals(local))
                || ownNames.contains(name)
                || (LOOPBACK_NAMES.contains(name)
                        && local.filter(InetAddress::isLoopbackAddress).isPresent())
                || address.filter(said -> host.equalsIgnoreCase(said.getRawAuthority()))
                        .isPresent();
    }

    /** Whether an address that a write says it comes from is of the very host it was sent to. */
    boolean isOwn(Context ctx, @Nullable String from, String host) {
        if (from == null) {
            return false;
        }
        try {
            URI uri = URI.create(from);
            String scheme = String.valueOf(uri.getScheme());
            boolean known = scheme.equals("http") || (scheme.equals("https") && !isDesk(ctx));
            return known
                    && uri.getRawAuthority() != null
                    && uri.getRawAuthority().toLowerCase(Locale.ROOT).equals(host.toLowerCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Whether what is sent there cannot be read on the way, so that a browser may be told never to send it otherwise. */
    public boolean isSecret(Context ctx) {
        return ctx.req().isSecure()
                || address.filter(said -> "https".equals(said.getScheme())).isPresent();
    }

    /** The addresses of this computer in its networks, private ones first. */
    public static List<InetAddress> inNetworks() {
        try {
            return Collections.list(NetworkInterface.getNetworkInterfaces()).stream()
                    .filter(Doors::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(one -> one instanceof Inet4Address && !one.isLinkLocalAddress())
                    .sorted((a, b) -> Boolean.compare(b.isSiteLocalAddress(), a.isSiteLocalAddress()))
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback();
        } catch (SocketException e) {
            return false;
        }
    }

    private static Set<String> ownNames() {
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            String bare = name.contains(".") ? name.substring(0, name.indexOf('.')) : name;
            return Stream.of(name, bare, bare + ".local")
                    .filter(one -> !one.isBlank() && !LOOPBACK_NAMES.contains(one))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (UnknownHostException e) {
            return Set.of();
        }
    }

    /** An address written in figures; a name is none, and nobody is asked what it stands for. */
    private static Optional<InetAddress> literal(String text) {
        if (!FIGURES.matcher(text).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(text));
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }
}
