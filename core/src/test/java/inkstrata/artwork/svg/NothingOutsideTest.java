package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drawing that tries every way out of its file: nobody is called, and nothing of another file shows. */
class NothingOutsideTest {
    private static final ReadOptions LEAVE_OUT = new ReadOptions(OptionalDouble.empty(), OptionalDouble.empty(), true);
    private static final Rgb OWN = Rgb.parse("#102030");
    private static final Rgb SECRET = Rgb.parse("#facade");

    private final AtomicInteger calls = new AtomicInteger();
    private ServerSocket server;

    @TempDir
    private Path folder;

    @BeforeEach
    void listen() throws IOException {
        server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread listener = new Thread(this::answer, "listener");
        listener.setDaemon(true);
        listener.start();
        Files.writeString(
                folder.resolve("secret.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm'><g id='g'><rect id='r' width='9'"
                        + " height='9' fill='#facade'/></g></svg>");
        Files.writeString(folder.resolve("secret.css"), "rect, path { fill: #facade }");
        Files.writeString(folder.resolve("secret.txt"), "<rect width='9' height='9' fill='#facade'/>");
        Files.writeString(folder.resolve("secret.dtd"), "<!ENTITY ink '#facade'>");
    }

    @AfterEach
    void hangUp() throws IOException {
        server.close();
    }

    private void answer() {
        while (!server.isClosed()) {
            try (Socket caller = server.accept()) {
                calls.incrementAndGet();
                caller.getOutputStream().write("HTTP/1.0 404 Not Found\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private String there() {
        return "http://" + server.getInetAddress().getHostAddress() + ":" + server.getLocalPort() + "/";
    }

    @Test
    void theListenerHearsCalls() throws IOException {
        try (Socket call = new Socket(server.getInetAddress(), server.getLocalPort())) {
            assertThat(call.getInputStream().read()).isEqualTo('H');
        }
        assertThat(calls).hasValue(1);
    }

    /** {@code @@} becomes an address on a listening server, then a folder with files of those names, then one in a jar. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<use href='@@secret.svg#r'/>",
                "<use xlink:href='@@secret.svg#r'/>",
                "<image href='@@secret.svg' width='5' height='5'/>",
                "<image xlink:href='@@secret.png' width='5' height='5'/>",
                "<image href='jar:@@secret.jar!/secret.svg' width='5' height='5'/>",
                "<a href='@@secret.svg'><rect width='1' height='1' fill='#102030'/></a>",
                "<style>@import url(@@secret.css);</style>",
                "<style>@import '@@secret.css';</style>",
                "<style type='text/css' href='@@secret.css'/>",
                "<style xlink:href='@@secret.css'/>",
                "<style>@font-face{font-family:x;src:url(@@secret.ttf)} text{font-family:x}</style><text y='9'>x</text>",
                "<font-face><font-face-src><font-face-uri xlink:href='@@secret.svg#f'/></font-face-src></font-face>",
                "<style>rect{fill:url(@@secret.svg#r)}</style>",
                "<rect width='2' height='2' fill='url(@@secret.svg#r) #102030'/>",
                "<rect width='2' height='2' stroke='url(\"@@secret.svg#r\")'/>",
                "<rect width='2' height='2' fill='#102030' clip-path='url(@@secret.svg#r)'/>",
                "<rect width='2' height='2' fill='#102030' style='mask:url(@@secret.svg#r)'/>",
                "<rect width='2' height='2' fill='#102030' filter='url(@@secret.svg#r)'/>",
                "<path d='M0 0h5' stroke='#102030' style='marker:url(@@secret.svg#r)'/>",
                "<rect width='2' height='2' fill='#102030' cursor='url(@@secret.svg#r),auto'/>",
                "<rect width='2' height='2' fill='#102030 icc-color(acme, 1)'/><color-profile xlink:href='@@p.icc' name='acme'/>",
                "<rect width='2' height='2' style='fill:#102030;color-profile:url(@@p.icc)'/>",
                "<rect width='2' height='2' style='--u:url(@@secret.svg#r);fill:var(--u)'/>",
                "<linearGradient id='l' xlink:href='@@secret.svg#l'/><rect width='2' height='2' fill='url(#l)'/>",
                "<pattern id='l' href='@@secret.svg#l'/><rect width='2' height='2' fill='url(#l)'/>",
                "<filter id='f'><feImage href='@@secret.svg'/></filter><rect filter='url(#f)' width='2' height='2'/>",
                "<script href='@@secret.js'/><script xlink:href='@@secret.js' type='application/java-archive'/>",
                "<script>fetch('@@secret.js')</script>",
                "<rect onload=\"location='@@x'\" width='2' height='2'/>",
                "<text y='9'><tref xlink:href='@@secret.svg#r'/></text>",
                "<text y='9'><textPath href='@@secret.svg#r'>x</textPath></text>",
                "<text y='9'><altGlyph xlink:href='@@secret.svg#r'>x</altGlyph></text>",
                "<animate href='@@secret.svg#r' attributeName='width'/>",
                "<mpath xlink:href='@@secret.svg#r'/><discard href='@@secret.svg#r'/>",
                "<foreignObject width='5' height='5'><iframe xmlns='http://www.w3.org/1999/xhtml' src='@@x'/></foreignObject>",
                "<link xmlns='http://www.w3.org/1999/xhtml' rel='stylesheet' href='@@secret.css'/>",
                "<xi:include xmlns:xi='http://www.w3.org/2001/XInclude' href='@@secret.svg'/>",
                "<g xml:base='@@secret.svg'><use href='#r'/><rect width='2' height='2' fill='url(#r) #102030'/></g>",
                "<svg width='9' height='9' xml:base='@@'><use href='secret.svg#r'/></svg>",
                "<rect width='2' height='2' style=\"fill:#102030;filter:url('@@secret.svg#r') blur(1px)\"/>",
                "<handler xmlns:ev='http://www.w3.org/2001/xml-events' ev:event='load' href='@@x'/>"
            })
    void contentReachesNothing(String content) throws IOException {
        for (String address : addresses()) {
            check("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='10mm'"
                    + " height='10mm'>" + content.replace("@@", address) + "</svg>");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<?xml-stylesheet href='@@secret.css' type='text/css'?>",
                "<?xml-stylesheet href='@@secret.xsl' type='text/xsl'?>",
                "<!DOCTYPE svg SYSTEM '@@secret.dtd'>",
                "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' '@@secret.dtd'>",
                "<!DOCTYPE svg [<!ENTITY e SYSTEM '@@secret.txt'>]>",
                "<!DOCTYPE svg [<!ENTITY % p SYSTEM '@@secret.dtd'>%p;<!ENTITY e 'x'>]>",
                "<!DOCTYPE svg [<!NOTATION n SYSTEM '@@secret.txt'><!ENTITY e 'x'>]>"
            })
    void prologReachesNothing(String prolog) throws IOException {
        String entity = prolog.contains("ENTITY e") ? "&e;" : "";
        for (String address : addresses()) {
            check(prolog.replace("@@", address) + "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xsi="
                    + "'http://www.w3.org/2001/XMLSchema-instance' xsi:schemaLocation='x " + address
                    + "x.xsd' width='10mm' height='10mm'><rect width='2' height='2' fill='#102030'/>" + entity
                    + "</svg>");
        }
    }

    private List<String> addresses() {
        return List.of(there(), folder.toUri().toString(), "jar:" + there() + "x.jar!/", "");
    }

    private void check(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try {
            Artwork artwork = SvgReader.read("drawing.svg", new ByteArrayInputStream(bytes), LEAVE_OUT);
            assertThat(artwork.shapes())
                    .extracting(FlatShape::colour)
                    .allMatch(colour -> colour.equals(OWN) || colour.equals(Rgb.BLACK))
                    .doesNotContain(SECRET);
        } catch (ArtworkException refused) {
            assertThat(refused).hasMessageStartingWith("drawing.svg");
        }
        assertThat(calls).hasValue(0);
    }
}
