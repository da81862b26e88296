package org.ripewood.transfer;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Files with faults; thrown inside the import's transaction, so that nothing of it stays. */
final class FaultyFiles extends RuntimeException {

    private final transient List<FileFault> faults;

    FaultyFiles(Collection<FileFault> faults) {
        super(
                "%d fault(s) in the school's files; nothing was entered.%n%s"
                        .formatted(
                                faults.size(),
                                faults.stream()
                                        .sorted()
                                        .map(fault -> "  " + fault)
                                        .collect(Collectors.joining(System.lineSeparator()))));
        this.faults = faults.stream().sorted().toList();
    }

    List<FileFault> faults() {
        return faults;
    }
}
