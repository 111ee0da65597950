package dapple.order;

import dapple.site.ConflictException;

/** An order that cannot be placed; nothing was stored. */
class OrderRefusedException extends ConflictException {
    private static final long serialVersionUID = 1;

    private final OrderFault fault;

    OrderRefusedException(OrderFault fault) {
        super("the order cannot be placed: " + fault);
        this.fault = fault;
    }

    OrderFault fault() {
        return fault;
    }
}
