package dustwright.studio;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.util.Collections;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** What the studio shows browsers so that they speak HTTPS with it: a certificate with its key. */
public final class Certificate {
    private static final String KIND = "PKCS12";

    private final KeyStore keys;
    private final String password;

    private Certificate(KeyStore keys, String password) {
        this.keys = keys;
        this.password = password;
    }

    /** A file that is none of use, with the reason in words. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /**
     * Reads a PKCS 12 file.
     *
     * @throws Refused where it is none, the password does not open it, it has no key, or its certificate does not hold now
     */
    public static Certificate read(Path file, char[] password, Clock clock) throws Refused {
        if (!Files.isRegularFile(file)) {
            throw new Refused("There is no file " + file + ".");
        }
        try (InputStream in = Files.newInputStream(file)) {
            KeyStore keys = KeyStore.getInstance(KIND);
            keys.load(in, password);
            boolean known = false;
            for (String alias : Collections.list(keys.aliases())) {
                if (keys.isKeyEntry(alias) && keys.getCertificate(alias) instanceof X509Certificate certificate) {
                    holds(file, certificate, clock);
                    known = true;
                }
            }
            if (!known) {
                throw new Refused(file + " has no key with a certificate; a PKCS 12 file of both is needed.");
            }
            return new Certificate(keys, new String(password));
        } catch (IOException | GeneralSecurityException fault) {
            throw new Refused(file + " could not be opened: it is no PKCS 12 file, or the password is not its own.");
        }
    }

    private static void holds(Path file, X509Certificate certificate, Clock clock) throws Refused {
        if (clock.instant().isAfter(certificate.getNotAfter().toInstant())) {
            throw new Refused("The certificate in " + file + " ended on "
                    + certificate.getNotAfter().toInstant() + "; browsers would warn everybody.");
        }
        if (clock.instant().isBefore(certificate.getNotBefore().toInstant())) {
            throw new Refused("The certificate in " + file + " begins on "
                    + certificate.getNotBefore().toInstant() + "; browsers would warn everybody.");
        }
    }

    /** Answers at an address by HTTPS alone. Which name is asked for is no matter: whoever asks has to sign in. */
    ServerConnector connector(Server server, HttpConfiguration usual, String address, int port) {
        SslContextFactory.Server keysOnly = new SslContextFactory.Server();
        keysOnly.setKeyStore(keys);
        keysOnly.setKeyStorePassword(password);
        HttpConfiguration secure = new HttpConfiguration(usual);
        secure.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(
                server, new SslConnectionFactory(keysOnly, "http/1.1"), new HttpConnectionFactory(secure));
        connector.setHost(address);
        connector.setPort(port);
        return connector;
    }
}
