package inkstrata.command;

import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.List;
import picocli.CommandLine.Option;

/** How bad a finding must be for the shell to be told. */
final class FailOn {
    @Option(
            names = "--fail-on",
            paramLabel = "SEVERITY",
            defaultValue = "error",
            description = "End with exit code 1 where something as bad as this was found: note, warning or error (the"
                    + " default).")
    private Severity severity;

    int exitCode(List<Finding> findings) {
        boolean failed =
                findings.stream().anyMatch(finding -> finding.severity().compareTo(severity) >= 0);
        return failed ? ExitCode.FINDINGS : ExitCode.DONE;
    }
}
