package dapple.archive;

/** An archive is not taken in; nothing has changed. */
final class ArchiveRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final ArchiveFault fault;

    ArchiveRefusedException(ArchiveFault fault, String found) {
        super(fault + ": " + found);
        this.fault = fault;
    }

    ArchiveRefusedException(ArchiveFault fault, Throwable cause) {
        super(fault.name(), cause);
        this.fault = fault;
    }

    ArchiveFault fault() {
        return fault;
    }
}
