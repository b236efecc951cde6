package inkstrata.command;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/**
 * The file system there is, of which every operation that changes something is counted before it is done: folders made, files opened,
 * written and closed, names changed, things taken away.
 */
final class CountedFiles extends FileSystemProvider {
    /** What happens before an operation. */
    interface Before {
        /**
         * Told of an operation before it is done.
         *
         * @param number from 1
         */
        void operation(int number, String what) throws IOException;
    }

    private final FileSystem real = FileSystems.getDefault();
    private final FileSystem counted = new Counted();
    private final Before before;
    private int operations;

    CountedFiles(Before before) {
        this.before = before;
    }

    int operations() {
        return operations;
    }

    private void count(String what) throws IOException {
        operations++;
        before.operation(operations, what);
    }

    /** The same path, whose operations are counted. */
    Path path(Path path) {
        return (Path) Proxy.newProxyInstance(
                Path.class.getClassLoader(), new Class<?>[] {Path.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("getFileSystem")) {
                        return counted;
                    }
                    Object[] plain = arguments == null ? new Object[0] : arguments.clone();
                    for (int i = 0; i < plain.length; i++) {
                        plain[i] = plain[i] instanceof Path other ? plain(other) : plain[i];
                    }
                    try {
                        Object answer = method.invoke(path, plain);
                        return answer instanceof Path other ? path(other) : answer;
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
    }

    private Path plain(Path path) {
        return Proxy.isProxyClass(path.getClass()) ? real.getPath(path.toString()) : path;
    }

    @Override
    public String getScheme() {
        return "counted";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return counted;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        if (options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND)) {
            throw new UnsupportedOperationException("written past the count");
        }
        return real.provider().newByteChannel(plain(path), options, attributes);
    }

    @Override
    public OutputStream newOutputStream(Path path, OpenOption... options) throws IOException {
        count("open " + path);
        return new FilterOutputStream(real.provider().newOutputStream(plain(path), options)) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                count("write " + path);
                out.write(bytes, from, length);
            }

            @Override
            public void close() throws IOException {
                try {
                    count("close " + path);
                } finally {
                    out.close();
                }
            }
        };
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        DirectoryStream<Path> entries =
                real.provider().newDirectoryStream(plain(folder), entry -> filter.accept(path(entry)));
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                Iterator<Path> plain = entries.iterator();
                return new Iterator<>() {
                    @Override
                    public boolean hasNext() {
                        return plain.hasNext();
                    }

                    @Override
                    public Path next() {
                        return path(plain.next());
                    }
                };
            }

            @Override
            public void close() throws IOException {
                entries.close();
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        count("make " + folder);
        real.provider().createDirectory(plain(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        count("delete " + path);
        real.provider().delete(plain(path));
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        count("copy " + from);
        real.provider().copy(plain(from), plain(to), options);
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        count("move " + from);
        real.provider().move(plain(from), plain(to), options);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return real.provider().isSameFile(plain(one), plain(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.provider().isHidden(plain(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.provider().getFileStore(plain(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        real.provider().checkAccess(plain(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return real.provider().getFileAttributeView(plain(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return real.provider().readAttributes(plain(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return real.provider().readAttributes(plain(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        count("set " + path);
        real.provider().setAttribute(plain(path), attribute, value, options);
    }

    private final class Counted extends FileSystem {
        @Override
        public FileSystemProvider provider() {
            return CountedFiles.this;
        }

        @Override
        public void close() {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return real.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            return real.getRootDirectories();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            return real.getFileStores();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return real.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return path(real.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            return real.getPathMatcher(pattern);
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            return real.getUserPrincipalLookupService();
        }

        @Override
        public WatchService newWatchService() {
            throw new UnsupportedOperationException();
        }
    }
}
