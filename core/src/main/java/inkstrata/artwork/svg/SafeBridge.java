package inkstrata.artwork.svg;

import java.io.InputStream;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Document;

/** Sets Batik up so that it computes styles and lays out text but fetches nothing and runs nothing. */
final class SafeBridge {
    private SafeBridge() {}

    /** A context in which the document's styles can be computed. */
    static BridgeContext open(SVGOMDocument document) {
        UserAgent agent = new Agent();
        Context context = new Context(agent);
        context.begin(document);
        return context;
    }

    private static final class Context extends BridgeContext {
        Context(UserAgent agent) {
            super(agent, new NoLoader(agent));
        }

        void begin(SVGOMDocument drawing) {
            setDynamic(false);
            setGVTBuilder(new GVTBuilder());
            setDocument(drawing);
            initializeDocument(drawing);
        }
    }

    private static final class Agent extends UserAgentAdapter {
        Agent() {
            addStdFeatures();
        }

        /** Of {@code em} where no font size is given: what browsers and {@code rem} take (common practice; CSS leaves it to the program). */
        @Override
        public float getMediumFontSize() {
            return 16;
        }

        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
            return new NoLoadExternalResourceSecurity();
        }

        @Override
        public ScriptSecurity getScriptSecurity(String scriptType, ParsedURL script, ParsedURL document) {
            return new NoLoadScriptSecurity(scriptType);
        }

        @Override
        public void displayError(Exception error) {
            throw new IllegalStateException(error);
        }

        /** Messages of Batik about values it cannot use; the document has been mended with notes before. */
        @Override
        public void displayMessage(String message) {}
    }

    /** Knows no document but the one being read. */
    private static final class NoLoader extends DocumentLoader {
        NoLoader(UserAgent agent) {
            super(agent);
        }

        @Override
        public Document loadDocument(String uri) {
            throw refused(uri);
        }

        @Override
        public Document loadDocument(String uri, InputStream stream) {
            throw refused(uri);
        }

        private static SecurityException refused(String uri) {
            return new SecurityException("a drawing may not refer to other files: " + uri);
        }
    }
}
