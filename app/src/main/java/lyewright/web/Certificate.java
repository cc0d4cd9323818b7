package lyewright.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Collections;
import lyewright.measure.Outcome;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** A maker's own certificate with its key, from a PKCS #12 file, so that what goes over the network cannot be read there. */
public final class Certificate {

    private final KeyStore store;
    private final String password;

    private Certificate(KeyStore store, String password) {
        this.store = store;
        this.password = password;
    }

    /**
     * Reads one.
     *
     * @param file the file, as in {@code workshop.p12}
     * @param password of the file; empty where it has none
     * @return it, or why it cannot be used
     */
    public static Outcome<Certificate> read(Path file, String password) {
        if (!Files.isRegularFile(file)) {
            return Outcome.refused("there is no file " + file, "name the PKCS #12 file with certificate and key");
        }
        try (InputStream in = Files.newInputStream(file)) {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(in, password.toCharArray());
            for (String alias : Collections.list(store.aliases())) {
                if (store.isKeyEntry(alias) && store.getKey(alias, password.toCharArray()) != null) {
                    return Outcome.ok(new Certificate(store, password));
                }
            }
            return Outcome.refused(file + " holds no key", "put the certificate and its key into one PKCS #12 file");
        } catch (IOException | GeneralSecurityException e) {
            return Outcome.refused(
                    file + " cannot be opened as a PKCS #12 file with this password",
                    "give the password in LYEWRIGHT_CERTIFICATE_PASSWORD, and see that the file is whole");
        }
    }

    SslContextFactory.Server context() {
        SslContextFactory.Server context = new SslContextFactory.Server();
        context.setKeyStore(store);
        context.setKeyStorePassword(password);
        return context;
    }
}
