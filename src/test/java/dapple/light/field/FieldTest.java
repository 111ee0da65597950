package dapple.light.field;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FieldTest {
    @Test
    void agreesWithBruteForce() {
        Random random = new Random(1);
        double worst = 0;
        for (int scene = 0; scene < 300; scene++) {
            Vec aim = direction(random);
            Vec along = aim.anyPerpendicular();
            double size = 0.02 + random.nextDouble() * 0.5;
            Source source = switch (scene % 6) {
                case 0 -> new Source.Line(size, along, Optional.empty());
                case 1 -> new Source.Line(size, along, Optional.of(new Source.Reflector(1.5, 0.05)));
                case 2 -> new Source.Cylinder(size, along, size * 0.05);
                case 3 -> new Source.Disc(size);
                case 4 -> new Source.Rectangle(size, along, size * 0.3);
                default -> new Source.Face(new Beam.Power(8), size);
            };
            Vec place = direction(random).times(size * 0.6 + random.nextDouble());
            Vec normal = direction(random);
            Lamp lamp = new Lamp("a", new Vec(0, 0, 0), aim, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
            Light light = Field.of(new Scene(1e-4, List.of(lamp), List.of(), List.of()))
                    .at(new Receiver(place, new Facing.Direction(normal)));
            double found = light.values().get(Quantity.UV_INDEX);
            double brute = brute(source, aim, place, normal);
            double off = Math.abs(found - brute) / Math.max(brute, 1e-6);
            if (off > 1e-3) System.out.println(scene % 6 + " " + found + " " + brute + " " + off + " est " + light.error());
            worst = Math.max(worst, off);
        }
        System.out.println("worst " + worst);
        assertThat(worst).isLessThan(2e-3);
    }

    private static double brute(Source source, Vec aim, Vec place, Vec normal) {
        double sum = 0;
        int n = 2000;
        if (source instanceof Source.Line line) {
            for (int i = 0; i < 20000; i++) {
                double u = (i + 0.5) / 20000 - 0.5;
                Vec p = line.along().times(u * line.length());
                Vec dir = place.minus(p);
                double r = dir.length();
                dir = dir.times(1 / r);
                double cosAxis = dir.dot(line.along());
                double sin = Math.sqrt(1 - cosAxis * cosAxis);
                Vec out = dir.minus(line.along().times(cosAxis));
                double t = line.reflector().map(l -> l.towards(out.dot(aim) / out.length())).orElse(1.0);
                sum += sin * t * Math.max(0, -dir.dot(normal)) / (r * r) * line.length() / 20000;
            }
            return sum;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double u = (i + 0.5) / n;
                double v = (j + 0.5) / n;
                Vec p;
                Vec face = aim;
                double area;
                double power = 1;
                if (source instanceof Source.Cylinder c) {
                    Vec side = c.along().anyPerpendicular();
                    Vec other = c.along().cross(side);
                    face = side.times(Math.cos(2 * Math.PI * u)).plus(other.times(Math.sin(2 * Math.PI * u)));
                    p = face.times(c.radius()).plus(c.along().times((v - 0.5) * c.length()));
                    area = 2 * Math.PI * c.radius() * c.length();
                } else if (source instanceof Source.Rectangle r) {
                    p = r.along().times((u - 0.5) * r.length()).plus(aim.cross(r.along()).times((v - 0.5) * r.width()));
                    area = r.length() * r.width();
                } else {
                    double radius = source instanceof Source.Disc d ? d.radius() : ((Source.Face) source).radius();
                    Vec side = aim.anyPerpendicular();
                    double rho = radius * Math.sqrt(u);
                    p = side.times(rho * Math.cos(2 * Math.PI * v)).plus(aim.cross(side).times(rho * Math.sin(2 * Math.PI * v)));
                    area = Math.PI * radius * radius;
                    if (source instanceof Source.Face) {
                        power = 8;
                        area = 1;
                    }
                }
                Vec dir = place.minus(p);
                double r = dir.length();
                double cos = dir.dot(face) / r;
                if (cos > 0) {
                    sum += Math.pow(cos, power) * Math.max(0, -dir.dot(normal) / r) / (r * r) * area / n / n;
                }
            }
        }
        return sum;
    }

    private static Vec direction(Random random) {
        return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    }
}
