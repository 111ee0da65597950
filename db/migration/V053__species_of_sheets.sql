-- Which species a name of sheets means at a site, as somebody said last.
create table import_species (
  site_id bigint not null,
  name varchar(120) not null,
  meaning varchar(120) not null,
  constraint pk_import_species primary key (site_id, name),
  constraint fk_import_species_site foreign key (site_id) references site (id)
);
