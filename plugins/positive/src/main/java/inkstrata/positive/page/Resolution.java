package inkstrata.positive.page;

import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;

/** How many pixels there are to a length, written into a file's metadata. */
final class Resolution {
    private Resolution() {}

    /** In PNG (ISO/IEC 15948, chunk pHYs), which counts in whole pixels a metre. */
    static void png(double perMm, IIOMetadata metadata) throws IIOInvalidTreeException {
        String perMetre = Long.toString(Math.round(perMm * 1000));
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        size.setAttribute("pixelsPerUnitXAxis", perMetre);
        size.setAttribute("pixelsPerUnitYAxis", perMetre);
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
        root.appendChild(size);
        metadata.mergeTree("javax_imageio_png_1.0", root);
    }

    /** In TIFF 6.0, whose unit the JDK's writer chooses: the centimetre. */
    static void tiff(double perMm, IIOMetadata metadata) throws IIOInvalidTreeException {
        IIOMetadataNode dimension = new IIOMetadataNode("Dimension");
        for (String axis : new String[] {"HorizontalPixelSize", "VerticalPixelSize"}) {
            IIOMetadataNode size = new IIOMetadataNode(axis);
            size.setAttribute("value", Double.toString(1 / perMm));
            dimension.appendChild(size);
        }
        IIOMetadataNode root = new IIOMetadataNode(IIOMetadataFormatImpl.standardMetadataFormatName);
        root.appendChild(dimension);
        metadata.mergeTree(IIOMetadataFormatImpl.standardMetadataFormatName, root);
    }
}
