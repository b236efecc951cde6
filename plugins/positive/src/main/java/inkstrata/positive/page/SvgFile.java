package inkstrata.positive.page;

import inkstrata.artwork.FillRule;
import inkstrata.measure.Frame;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * A page as SVG 1.1: one user unit for each millimetre, black the only paint, no style sheet, no script, nothing from outside.
 */
public final class SvgFile {
    private SvgFile() {}

    /** Writes it, and closes the stream. */
    public static void write(Page page, OutputStream stream) throws IOException {
        try (Writer out = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), 1 << 16)) {
            Frame frame = page.frame();
            String width = MmText.of(frame.width());
            String height = MmText.of(frame.height());
            out.append("""
                    <?xml version="1.0" encoding="UTF-8"?>
                    <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%smm" height="%smm" viewBox="%s %s %s %s" fill="#000000">
                    <title>%s</title>
                    """.formatted(
                            width,
                            height,
                            MmText.of(frame.x()),
                            MmText.of(frame.y()),
                            width,
                            height,
                            XmlText.escaped(page.title())));
            for (Page.Group group : page.groups()) {
                group(group, out);
            }
            out.append("</svg>\n");
        }
    }

    private static void group(Page.Group group, Writer out) throws IOException {
        String clip = "";
        if (group.window().isPresent()) {
            Frame window = group.window().get();
            clip = " clip-path=\"url(#" + group.id() + "-window)\"";
            out.append("""
                    <clipPath id="%s-window"><rect x="%s" y="%s" width="%s" height="%s"/></clipPath>
                    """.formatted(
                            group.id(),
                            MmText.of(window.x()),
                            MmText.of(window.y()),
                            MmText.of(window.width()),
                            MmText.of(window.height())));
        }
        boolean isEvenOdd = group.items().stream().allMatch(item -> item.area().rule() == FillRule.EVENODD);
        out.append("<g id=\"" + group.id() + "\"" + (isEvenOdd ? " fill-rule=\"evenodd\"" : "") + clip + ">\n");
        for (Page.Item item : group.items()) {
            item(item, out);
        }
        out.append("</g>\n");
    }

    private static void item(Page.Item item, Writer out) throws IOException {
        if (!item.words().isEmpty()) {
            out.append("<g><title>" + XmlText.escaped(item.words()) + "</title>\n");
        }
        out.append("<path d=\"");
        SvgPath.write(item.area().outline(), out);
        out.append("\"/>" + (item.words().isEmpty() ? "" : "</g>") + "\n");
    }
}
