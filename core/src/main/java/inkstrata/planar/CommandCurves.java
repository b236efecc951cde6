package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines and curves of an artwork's outlines, in grid steps, by the numbers that {@link Sources} give them. */
final class CommandCurves {
    private final List<Area> areas;
    private final Map<Integer, List<Optional<Bezier>>> known = new HashMap<>();

    CommandCurves(Drawing drawing) {
        this.areas = drawing.areas();
    }

    /** What a command draws; empty where that is nothing. */
    Optional<Bezier> of(Sources.Part part) {
        List<Optional<Bezier>> commands = known.computeIfAbsent(part.outline(), this::read);
        return part.command() < commands.size() ? commands.get(part.command()) : Optional.empty();
    }

    private List<Optional<Bezier>> read(int outline) {
        Commands commands = new Commands();
        areas.get(outline).outline().sendTo(commands);
        commands.close();
        return commands.curves;
    }

    private static final class Commands implements CurveSink {
        private final List<Optional<Bezier>> curves = new ArrayList<>();
        private double startX;
        private double startY;
        private double x;
        private double y;

        /** The line that closes a contour has the number of the command after it. */
        @Override
        public void moveTo(double toX, double toY) {
            close();
            startX = x = toX;
            startY = y = toY;
        }

        void close() {
            add(x, y, startX, startY);
        }

        @Override
        public void lineTo(double toX, double toY) {
            add(x, y, toX, toY);
        }

        @Override
        public void quadTo(double x1, double y1, double toX, double toY) {
            add(x, y, x1, y1, toX, toY);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
            add(x, y, x1, y1, x2, y2, toX, toY);
        }

        private void add(double... controls) {
            x = controls[controls.length - 2];
            y = controls[controls.length - 1];
            for (int i = 0; i < controls.length; i++) {
                controls[i] *= Grid.STEPS_PER_MM;
            }
            Bezier drawn = new Bezier(controls);
            boolean isNothing = drawn.degree() == 1 && drawn.x(0) == drawn.x(1) && drawn.y(0) == drawn.y(1);
            curves.add(isNothing ? Optional.empty() : Optional.of(drawn));
        }
    }
}
