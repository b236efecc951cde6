package inkstrata.artwork.svg;

import org.apache.batik.anim.dom.SVGStylableElement;
import org.apache.batik.dom.AbstractDocument;
import org.w3c.dom.Node;

/**
 * A basic shape in a fifth of the memory of Batik's own: it can be styled, which is all that is asked of it, but not
 * animated or transformed by scripts.
 */
final class LeanShape extends SVGStylableElement {
    private static final long serialVersionUID = 1L;

    private final String name;

    /**
     * @param name without a prefix
     */
    LeanShape(String name, AbstractDocument owner) {
        this.name = name;
        this.ownerDocument = owner;
    }

    @Override
    public String getLocalName() {
        return name;
    }

    @Override
    protected Node newNode() {
        return new LeanShape(name, ownerDocument);
    }
}
