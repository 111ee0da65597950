package dapple.lamp;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a measurement is taken back. */
record WithdrawalForm(@Line @Size(max = 200) String reason) {}
