package dapple.desk;

import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/**
 * Which lamp in the place of another changes least.
 *
 * @param lamp that goes: its number in the draft, from 0
 */
record SwapAsked(@NotNull @Nullable Integer lamp) {}
