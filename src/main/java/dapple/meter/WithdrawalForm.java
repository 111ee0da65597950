package dapple.meter;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a calibration is wrong. */
record WithdrawalForm(@Line @Size(max = 200) String reason) {}
