package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/** The studio by HTTPS: what is served, what cookies look like, which files are no certificate. */
class CertificateTest {
    private static final String PASSWORD = "not-for-use";
    private static final String WHO = "A. Engineer";

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Path file;

    @BeforeEach
    void made() throws Exception {
        file = folder.resolve("studio.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keyalg",
                        "EC",
                        "-alias",
                        "studio",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=ip:127.0.0.1",
                        "-validity",
                        "2",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        file.toString(),
                        "-storepass",
                        PASSWORD)
                .redirectErrorStream(true)
                .start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(keytool.waitFor()).as(said).isZero();
    }

    private Studio open() throws Exception {
        Store store = Store.open(folder.resolve("kept.db"));
        new People(store).put(WHO, People.Role.DESIGNER, "a password of some length".toCharArray());
        return Studio.open(
                store,
                new Studio.Opening(
                        Plants.copy("bakery", folder),
                        "",
                        "127.0.0.1",
                        0,
                        "dustwright test",
                        false,
                        Optional.of(Certificate.read(file, PASSWORD.toCharArray(), Clock.systemUTC()))));
    }

    private HttpClient trusting() throws Exception {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            keys.load(in, PASSWORD.toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("studio", keys.getCertificate("studio"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private static HttpRequest.Builder ask(Studio studio, String path) {
        return HttpRequest.newBuilder(URI.create(studio.address() + path));
    }

    @Test
    void pages_are_served_by_https_and_who_is_signed_in_is_told_by_https_alone() throws Exception {
        try (Studio studio = open()) {
            assertThat(studio.address()).startsWith("https://127.0.0.1:");
            HttpClient client = trusting();
            HttpResponse<String> entered = client.send(
                    ask(studio, "api/session")
                            .header(Guard.OWN_HEADER, "studio")
                            .POST(HttpRequest.BodyPublishers.ofString(
                                    "{\"name\":\"" + WHO + "\",\"password\":\"a password of some length\"}"))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(entered.statusCode()).as(entered.body()).isEqualTo(200);
            String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
            assertThat(cookie).contains("Secure").contains("HttpOnly").contains("SameSite=Strict");
            HttpResponse<String> plant = client.send(
                    ask(studio, "api/plant")
                            .header("Cookie", cookie.replaceFirst(";.*", ""))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(plant.statusCode()).isEqualTo(200);
            assertThatThrownBy(() -> HttpClient.newHttpClient()
                            .send(ask(studio, "").build(), HttpResponse.BodyHandlers.ofString()))
                    .isInstanceOf(SSLHandshakeException.class);
        }
    }

    @EnabledIf("chromium")
    @Test
    void a_browser_signs_in_and_hears_of_changes() throws Exception {
        try (Studio studio = open();
                Browser browser = Browser.open();
                BrowserContext context = browser.trustingAll()) {
            var page = context.newPage();
            page.navigate(studio.address());
            page.getByLabel("Name").fill(WHO);
            page.getByLabel("Password").fill("a password of some length");
            page.keyboard().press("Enter");
            page.waitForSelector("#scale button");
            page.keyboard().press("2");
            PlaywrightAssertions.assertThat(page.locator("#source")).hasValue(Pattern.compile("dustwright: 1"));
            page.locator("#source").fill(page.locator("#source").inputValue() + "\n# by HTTPS\n");
            page.locator("#take").click();
            page.waitForSelector("#texthint:text-is('kept')");
        }
    }

    static boolean chromium() {
        return Browser.installed().isPresent();
    }

    @Test
    void what_is_no_certificate_is_refused_in_words() throws Exception {
        Clock now = Clock.systemUTC();
        Path text = Files.writeString(folder.resolve("text.p12"), "no certificate");
        assertThatThrownBy(() -> Certificate.read(text, PASSWORD.toCharArray(), now))
                .hasMessageContaining("no PKCS 12 file");
        assertThatThrownBy(() -> Certificate.read(file, "another".toCharArray(), now))
                .hasMessageContaining("password");
        assertThatThrownBy(() -> Certificate.read(folder.resolve("none.p12"), new char[0], now))
                .hasMessageContaining("There is no file");
        assertThatThrownBy(() -> Certificate.read(file, PASSWORD.toCharArray(), Clock.offset(now, Duration.ofDays(3))))
                .hasMessageContaining("ended on");
        assertThatThrownBy(() -> Certificate.read(file, PASSWORD.toCharArray(), Clock.offset(now, Duration.ofDays(-3))))
                .hasMessageContaining("begins on");
    }
}
