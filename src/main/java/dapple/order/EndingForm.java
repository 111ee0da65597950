package dapple.order;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why an order ends before its last day. */
record EndingForm(@Line @Size(max = 300) String reason) {}
