global using UnitSystem = Stockwright.Measures.UnitSystem;
