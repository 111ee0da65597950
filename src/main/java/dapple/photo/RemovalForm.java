package dapple.photo;

import dapple.site.Line;
import jakarta.validation.constraints.Size;

/** Why a photo is removed. */
record RemovalForm(@Line @Size(max = 300) String reason) {}
