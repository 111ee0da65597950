package dapple.agreement;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a finding is dealt with. */
record SettleForm(@Line @Size(max = 500) String reason) {}
