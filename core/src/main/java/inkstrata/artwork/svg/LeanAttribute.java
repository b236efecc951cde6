package inkstrata.artwork.svg;

import org.apache.batik.dom.AbstractDocument;
import org.apache.batik.dom.GenericAttr;
import org.w3c.dom.Node;
import org.w3c.dom.events.MutationEvent;

/** An attribute whose value is a string and not a tree of texts. */
final class LeanAttribute extends GenericAttr {
    private static final long serialVersionUID = 1L;

    private String value = "";

    LeanAttribute(String name, AbstractDocument owner) {
        super(name, owner);
    }

    @Override
    public String getNodeValue() {
        return value;
    }

    @Override
    public void setNodeValue(String newValue) {
        String before = value;
        value = newValue == null ? "" : newValue;
        setSpecified(true);
        if (ownerElement != null) {
            ownerElement.fireDOMAttrModifiedEvent(nodeName, this, before, value, MutationEvent.MODIFICATION);
        }
    }

    @Override
    protected Node newNode() {
        return new LeanAttribute(nodeName, ownerDocument);
    }

    @Override
    protected Node export(Node node, AbstractDocument document) {
        return withValue(super.export(node, document));
    }

    @Override
    protected Node deepExport(Node node, AbstractDocument document) {
        return withValue(super.deepExport(node, document));
    }

    @Override
    protected Node copyInto(Node node) {
        return withValue(super.copyInto(node));
    }

    @Override
    protected Node deepCopyInto(Node node) {
        return withValue(super.deepCopyInto(node));
    }

    private Node withValue(Node copy) {
        ((LeanAttribute) copy).value = value;
        return copy;
    }
}
