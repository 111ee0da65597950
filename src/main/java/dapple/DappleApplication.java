package dapple;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the application. */
@SpringBootApplication
class DappleApplication {

    public static void main(String[] arguments) {
        SpringApplication.run(DappleApplication.class, arguments);
    }
}
