package inkstrata.artwork.svg;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import javax.xml.XMLConstants;
import org.apache.batik.util.SVGConstants;
import org.xml.sax.Attributes;

/** Which namespace a prefix means at the place where the reader is; knows what every drawing program means by some. */
final class Namespaces {
    private final Deque<Map<String, String>> scopes = new ArrayDeque<>();

    Namespaces() {
        scopes.push(Map.of(
                "",
                "",
                "xml",
                XMLConstants.XML_NS_URI,
                "xmlns",
                XMLConstants.XMLNS_ATTRIBUTE_NS_URI,
                "xlink",
                SVGConstants.XLINK_NAMESPACE_URI,
                "svg",
                SVGConstants.SVG_NAMESPACE_URI));
    }

    void enter(Attributes attributes) {
        Map<String, String> scope = scopes.peek();
        Map<String, String> changed = null;
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            if (name.equals("xmlns") || name.startsWith("xmlns:")) {
                changed = changed == null ? new HashMap<>(scope) : changed;
                changed.put(name.equals("xmlns") ? "" : name.substring(6), attributes.getValue(i));
            }
        }
        scopes.push(changed == null ? scope : changed);
    }

    void leave() {
        scopes.pop();
    }

    /** Takes elements without a prefix to be SVG, from here inwards. */
    void assumeSvg() {
        Map<String, String> scope = new HashMap<>(scopes.pop());
        scope.put("", SVGConstants.SVG_NAMESPACE_URI);
        scopes.push(scope);
    }

    /** The namespace of an element's name; a prefix that nobody declared gets one of its own. */
    String ofElement(String qualifiedName) {
        int colon = qualifiedName.indexOf(':');
        String prefix = colon < 0 ? "" : qualifiedName.substring(0, colon);
        String namespace = scopes.peek().get(prefix);
        return namespace == null ? "urn:undeclared:" + prefix : namespace;
    }

    /** The namespace of an attribute's name; empty without a prefix. */
    String ofAttribute(String qualifiedName) {
        return qualifiedName.indexOf(':') < 0 ? "" : ofElement(qualifiedName);
    }
}
