package inkstrata.film;

/** One of the films that a file holds: a page, or one plate of a page. It is read when it is asked for. */
public interface FilmSheet {
    /**
     * Which of its kind, from 1.
     *
     * @return the number of the page, or of the plate on its page
     */
    int number();

    /** What the file calls it: a page's label, a plate's colorant; empty if it does not. */
    String label();

    /**
     * Reads it.
     *
     * @throws inkstrata.artwork.ArtworkException if it is no film, or asks for more than a film can
     */
    FilmDrawing read();
}
