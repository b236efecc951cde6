package inkstrata.artwork.svg;

import java.util.Map;
import org.w3c.dom.Element;

/**
 * What was decided for one element.
 *
 * @param properties in rising order of their weight
 */
record Styled(Element element, Map<String, Mended> properties) {}
