package dapple.lamp;

import java.util.Optional;

/** What is said of a lamp model and filed of its spectrum, with the version that forms change. */
record Dossier(
        long version,
        LampModelChange state,
        Optional<SpectrumFiled> spectrum,
        Optional<ReportOnFile> report,
        Optional<Waiver> waiver) {

    /** The measures of the shape, for pages: those that its kind does not have are empty. */
    public Optional<StoredShape> measures() {
        return state.shape().map(StoredShape::of);
    }
}
