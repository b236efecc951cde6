package inkstrata.artwork.svg;

import org.apache.batik.anim.dom.SVGStylableElement;
import org.apache.batik.css.engine.StyleDeclarationProvider;
import org.apache.batik.dom.AbstractDocument;
import org.apache.batik.util.DoublyIndexedTable;
import org.w3c.dom.Node;

/**
 * A shape or a group in a tenth of the memory of Batik's own: it can be styled, which is all that is asked of it, but not
 * animated or transformed by scripts. It knows where it stands in the file.
 */
final class LeanElement extends SVGStylableElement {
    private static final long serialVersionUID = 1L;

    /** Values that animations change; all share the empty table, for nobody asks for one. */
    private static final DoublyIndexedTable NOTHING_LIVE = new NothingLive();

    private final String name;
    private int line;
    private int number;

    /**
     * @param name without a prefix
     */
    LeanElement(String name, AbstractDocument owner) {
        this.name = name;
        this.ownerDocument = owner;
        this.liveAttributeValues = NOTHING_LIVE;
    }

    /** Where it starts in the file, and its number in it, both from 1. */
    void put(int newLine, int newNumber) {
        line = newLine;
        number = newNumber;
    }

    /** 0 if unknown. */
    int line() {
        return line;
    }

    /** 0 if unknown. */
    int number() {
        return number;
    }

    /** Forgets the style that was computed; it is computed again when somebody asks. */
    void forgetStyle() {
        setComputedStyleMap(null, null);
    }

    @Override
    public String getLocalName() {
        return name;
    }

    /** Scripts would override styles; there are none. */
    @Override
    public StyleDeclarationProvider getOverrideStyleDeclarationProvider() {
        return null;
    }

    /** Copies ask for it too. */
    @Override
    protected void initializeAllLiveAttributes() {}

    @Override
    protected Node newNode() {
        LeanElement copy = new LeanElement(name, ownerDocument);
        copy.put(line, number);
        return copy;
    }

    private static final class NothingLive extends DoublyIndexedTable {
        NothingLive() {
            super(1);
        }

        @Override
        public Object put(Object namespace, Object name, Object value) {
            throw new UnsupportedOperationException("a lean element has no live " + name);
        }
    }
}
