package dapple.practice;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why an event of a meter is wrong. */
record EventWithdrawalForm(@Line @Size(max = 200) String reason) {}
