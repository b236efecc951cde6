package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import org.apache.batik.anim.dom.SVGOMDocument;

/**
 * A drawing that Batik can walk: nothing in it leads outside the file, nothing is endless, and its styles stand on the
 * elements themselves.
 *
 * @param document every element carries its line; style sheets have been applied and are gone
 * @param frame the picture at true size, in millimetres
 * @param origin where its corner lies in the file's user units, taken as millimetres at true size
 */
record SafeDocument(SVGOMDocument document, Frame frame, Place origin) {
    /**
     * Reads and mends.
     *
     * @param bytes the file, already unzipped
     * @param notes what was mended is said here
     * @throws ArtworkException if the file is not SVG or asks for too much
     */
    static SafeDocument read(String fileName, byte[] bytes, ReadOptions options, Notes notes) {
        SVGOMDocument document = SafeXml.parse(fileName, bytes, notes);
        LocalReferences references = new LocalReferences(document);
        Cascade.apply(fileName, document, references, notes);
        Frame frame = TrueSize.of(fileName, document.getDocumentElement(), options, notes);
        Place origin = TrueSize.origin(document.getDocumentElement(), frame);
        DocumentMending.apply(fileName, document, references, notes);
        ReferenceGraph.check(fileName, document, references, notes);
        return new SafeDocument(document, frame, origin);
    }
}
