package dapple.reading;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a reading should never have been stored. */
record WithdrawalForm(@Line @Size(max = 200) String reason) {}
