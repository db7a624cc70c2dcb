-- One database for each service: none reads another's.
create database sizing;
create database fitting;
create database inventory;
create database notify;
