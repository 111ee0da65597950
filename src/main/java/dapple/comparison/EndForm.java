package dapple.comparison;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a comparison goes no further. */
record EndForm(@Line @Size(max = 200) String reason) {}
