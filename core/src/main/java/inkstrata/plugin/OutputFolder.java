package inkstrata.plugin;

import java.io.IOException;
import java.io.OutputStream;

/** Where writers put files; what they write is seen by nobody until all of it is there. */
public interface OutputFolder {
    /**
     * Opens a new file.
     *
     * @param name ASCII, may hold {@code /} for folders within this one
     * @throws IOException if the name is taken, leads outside, or the disk refuses
     */
    OutputStream create(String name) throws IOException;
}
