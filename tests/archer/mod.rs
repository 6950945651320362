//! A program that plays an archer over the pinned JSON, with planted truth. It shares no code with the
//! model that it puts to the test: its own vectors, its own random stream, its own reading of the answers.

mod bounds;
mod calibration;
mod fate;
mod figures;
mod luck;
mod mean;
mod next;
mod player;
mod session;
mod shaft;
mod share;
mod table;
mod tests;
mod vector;
mod world;
