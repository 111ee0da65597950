package dapple.api;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** A value of a document and where it stands; whatever is not as asked is refused with its JSON Pointer. */
record Part(JsonNode node, String pointer) {
    /** Farthest that a place may lie from the origin, along each axis: 1 km. */
    private static final double FARTHEST = 1000;

    static Part whole(JsonNode document) {
        return new Part(document, "");
    }

    RefusedException fault(String sentence) {
        return Problem.fault(pointer, sentence).refused();
    }

    /** This as an object that has no members but these. */
    Part object(Set<String> allowed) {
        if (!node.isObject()) {
            throw fault("An object must stand here.");
        }
        for (String name : node.propertyNames()) {
            if (!allowed.contains(name)) {
                throw inside(name).fault("This member is not known here. Known are: " + listed(allowed) + ".");
            }
        }
        return this;
    }

    Part object(String... allowed) {
        return object(Set.of(allowed));
    }

    private static String listed(Set<String> names) {
        return String.join(", ", names.stream().sorted().toList());
    }

    private Part inside(String name) {
        return new Part(node.path(name), pointer + "/" + name.replace("~", "~0").replace("/", "~1"));
    }

    boolean has(String name) {
        return node.has(name);
    }

    Optional<Part> find(String name) {
        return has(name) ? Optional.of(inside(name)) : Optional.empty();
    }

    Part need(String name) {
        return find(name).orElseThrow(() -> inside(name).fault("This member is missing."));
    }

    List<Part> items() {
        if (!node.isArray()) {
            throw fault("A list must stand here.");
        }
        List<Part> items = new ArrayList<>(node.size());
        for (int index = 0; index < node.size(); index++) {
            items.add(new Part(node.path(index), pointer + "/" + index));
        }
        return items;
    }

    List<Part> items(int exactly) {
        List<Part> items = items();
        if (items.size() != exactly) {
            throw fault("A list of " + exactly + " must stand here.");
        }
        return items;
    }

    /** At most so many; more is too much for one request. */
    List<Part> atMost(int most, String what) {
        if (node.isArray() && node.size() > most) {
            throw Problem.tooMuch(pointer, String.format(Locale.ROOT, "At most %,d %s are allowed.", most, what))
                    .refused();
        }
        return items();
    }

    String text() {
        if (!node.isString()) {
            throw fault("A text must stand here.");
        }
        return node.stringValue();
    }

    /** A name of 1 to 100 characters. */
    String name() {
        String name = text();
        if (name.isBlank() || name.length() > 100) {
            throw fault("A text of 1 to 100 characters must stand here.");
        }
        return name;
    }

    double number() {
        if (!node.isNumber()) {
            throw fault("A number must stand here.");
        }
        double found = node.numberValue().doubleValue();
        if (!Double.isFinite(found)) {
            throw fault("This number is too large.");
        }
        return found;
    }

    /** A number within limits, both allowed. */
    double number(double low, double high) {
        double found = number();
        if (!(found >= low && found <= high)) {
            throw fault("This number must be " + plain(low) + " to " + plain(high) + ".");
        }
        return found;
    }

    /** A number above 0. */
    double aboveZero(double high) {
        double found = number();
        if (!(found >= Double.MIN_NORMAL && found <= high)) {
            throw fault("This number must be above 0 and at most " + plain(high) + ".");
        }
        return found;
    }

    int whole(int low, int high) {
        double found = number(low, high);
        if (found != Math.rint(found)) {
            throw fault("This must be a whole number.");
        }
        return (int) found;
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.format(Locale.ROOT, "%.0f", number)
                : String.valueOf(number);
    }

    Vec place() {
        List<Part> items = items(3);
        return new Vec(
                items.get(0).coordinate(),
                items.get(1).coordinate(),
                items.get(2).coordinate());
    }

    double coordinate() {
        return number(-FARTHEST, FARTHEST);
    }

    /** A direction of any length but 0; given back with length 1. */
    Vec direction() {
        List<Part> items = items(3);
        Vec found = new Vec(
                items.get(0).number(), items.get(1).number(), items.get(2).number());
        if (found.x() == 0 && found.y() == 0 && found.z() == 0) {
            throw fault("A direction must have a length.");
        }
        return found.unit();
    }

    Quantity quantity() {
        return Names.quantity(text())
                .orElseThrow(() -> fault("This quantity is not known. Known are: " + Names.known() + "."));
    }

    /** A number for each of some quantities. */
    Map<Quantity, Double> byQuantity(double low, double high) {
        object(Names.all());
        Map<Quantity, Double> numbers = new EnumMap<>(Quantity.class);
        for (String name : node.propertyNames()) {
            Names.quantity(name)
                    .ifPresent(quantity -> numbers.put(quantity, need(name).number(low, high)));
        }
        return numbers;
    }

    /** Refuses this unless exactly one of some members is there. */
    String oneOf(String... names) {
        List<String> found = Arrays.stream(names).filter(this::has).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        String all = String.join(", ", names);
        if (found.isEmpty()) {
            throw fault("One of these members is missing: " + all + ".");
        }
        throw need(found.get(1)).fault("Only one of these members may be given: " + all + ".");
    }
}
