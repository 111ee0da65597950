package dapple.people;

import org.springframework.data.jpa.repository.JpaRepository;

interface InstallationRepository extends JpaRepository<Installation, Long> {}
