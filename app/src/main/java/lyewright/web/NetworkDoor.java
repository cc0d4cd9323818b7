package lyewright.web;

import java.net.InetAddress;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.jspecify.annotations.Nullable;

/**
 * The door for other devices of the local network: a port of its own beside the desk's, shut unless a maker opens it. Whoever comes by
 * it is asked who they are.
 */
public final class NetworkDoor {

    /** More than a workshop has devices, and far fewer than a computer has room for: the desk's door must open all the same. */
    private static final int MOST_CONNECTIONS = 500;

    private final Server server;
    private final Doors doors;
    private final int port;
    private final Optional<Certificate> certificate;

    private @Nullable ServerConnector open;

    /**
     * A door that is shut.
     *
     * @param server that answers
     * @param doors the names and rules of doors
     * @param port where it will be; 0 takes a free one
     * @param certificate for a door that nobody can listen at
     */
    NetworkDoor(Server server, Doors doors, int port, Optional<Certificate> certificate) {
        this.server = server;
        this.doors = doors;
        this.port = port;
        this.certificate = certificate;
    }

    /** Opens it; one that is open stays so. Gives what to type at another device, or why it stays shut. */
    public synchronized Outcome<List<String>> open() {
        if (open != null) {
            return Outcome.ok(addresses());
        }
        ServerConnector connector = connector(server, usual(server), certificate);
        connector.setPort(port);
        connector.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, connector));
        try {
            connector.open();
            // before anybody can come by it
            doors.opened(connector.getLocalPort());
            server.addConnector(connector);
            connector.start();
        } catch (Exception e) {
            doors.shut();
            connector.close();
            server.removeConnector(connector);
            return Outcome.refused(
                    "the door for other devices cannot be opened at port " + port,
                    "perhaps another program has that port; choose another with --devices-port");
        }
        open = connector;
        return Outcome.ok(addresses());
    }

    /** Shuts it. Who is being answered is answered to the end. */
    public synchronized void shut() {
        ServerConnector connector = open;
        open = null;
        if (connector != null) {
            try {
                connector.stop();
            } catch (Exception e) {
                connector.close();
            }
            server.removeConnector(connector);
            doors.shut();
        }
    }

    /** Whether it is open. */
    public synchronized boolean isOpen() {
        return open != null;
    }

    /** Where it is while it is open; -1 while it is shut. */
    public synchronized int port() {
        return open == null ? -1 : open.getLocalPort();
    }

    /** Whether what goes through it can be read on the way. */
    public boolean isSecret() {
        return certificate.isPresent();
    }

    /** What to type at another device: an address for each network that this computer is in; none where it is in none. */
    public synchronized List<String> addresses() {
        if (open == null) {
            return List.of();
        }
        if (doors.address().isPresent()) {
            return List.of(doors.address().get().toString());
        }
        String scheme = isSecret() ? "https://" : "http://";
        int at = open.getLocalPort();
        return Doors.inNetworks().stream()
                .map(InetAddress::getHostAddress)
                .map(host -> scheme + host + ":" + at)
                .toList();
    }

    /** How the first door of a server speaks; the others speak so too. */
    private static HttpConfiguration usual(Server server) {
        return ((ServerConnector) server.getConnectors()[0])
                .getConnectionFactory(HttpConnectionFactory.class)
                .getHttpConfiguration();
    }

    static ServerConnector connector(Server server, HttpConfiguration usual, Optional<Certificate> certificate) {
        if (certificate.isEmpty()) {
            return new ServerConnector(server, new HttpConnectionFactory(usual));
        }
        HttpConfiguration secure = new HttpConfiguration(usual);
        // the certificate is the maker's own, and may be for a name that this network does not use
        SecureRequestCustomizer customizer = new SecureRequestCustomizer();
        customizer.setSniHostCheck(false);
        secure.addCustomizer(customizer);
        ConnectionFactory http = new HttpConnectionFactory(secure);
        return new ServerConnector(
                server, new SslConnectionFactory(certificate.get().context(), http.getProtocol()), http);
    }
}
