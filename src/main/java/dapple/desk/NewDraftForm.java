package dapple.desk;

import dapple.site.Line;
import dapple.site.NotFoundException;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * A draft to begin.
 *
 * @param from what hangs now, nothing, or the id of another draft
 */
record NewDraftForm(
        @Line @Size(max = 80) String name,
        @NotNull @Size(max = 20) String from) {
    static final String INSTALLED = "installed";
    static final String EMPTY = "empty";

    static NewDraftForm empty() {
        return new NewDraftForm("", INSTALLED);
    }

    long draftId() {
        if (!from.matches("[0-9]{1,18}")) {
            throw new NotFoundException();
        }
        return Long.parseLong(from);
    }
}
