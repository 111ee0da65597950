package dapple.lamp;

import java.time.Instant;

/** What lists need of a filed spectrum: all but its content. */
record SpectrumFiled(long id, String source, Instant recordedAt, long recordedBy, SpectrumFigures figures) {
    SpectrumEvidence evidence() {
        return new SpectrumEvidence.OnFile(id, source, recordedAt, figures);
    }
}
