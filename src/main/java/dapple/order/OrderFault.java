package dapple.order;

/** Why an order cannot be placed. */
enum OrderFault {
    /** It would begin before it was given. */
    BACKDATED,
    ENDS_BEFORE_IT_BEGINS,
    /** A cap lowers the ceiling of the species, and there is none. */
    CAP_WITHOUT_TARGET,
    CAP_NOT_LOWER
}
