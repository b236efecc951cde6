package inkstrata.positive.page.read;

import inkstrata.film.FilmDrawing;
import inkstrata.film.FilmSheet;
import inkstrata.plugin.FilmFormat;
import java.util.ArrayList;
import java.util.List;

/** Reads films from images: PNG and TIFF, of one bit a pixel or of more. What is neither black nor clear is a fault of the film. */
public final class PixelFilms implements FilmFormat {
    @Override
    public String id() {
        return "pixel-films";
    }

    @Override
    public String description() {
        return "reads films from PNG and TIFF, for check";
    }

    @Override
    public List<String> endings() {
        return List.of("tif", "tiff", "png");
    }

    @Override
    public List<FilmSheet> open(String file, byte[] content) {
        List<FilmSheet> sheets = new ArrayList<>();
        int images = PixelImages.count(file, content);
        for (int i = 0; i < images; i++) {
            sheets.add(new Image(file, content, i, images > 1));
        }
        return sheets;
    }

    private record Image(String file, byte[] content, int index, boolean isOneOfMany) implements FilmSheet {
        @Override
        public int number() {
            return index + 1;
        }

        @Override
        public String label() {
            return "";
        }

        @Override
        public FilmDrawing read() {
            return PixelImages.read(isOneOfMany ? file + ", image " + number() : file, content, index);
        }
    }
}
