global using Stockwright.Storage.Batches;
global using Stockwright.Storage.Kitchen;
global using Stockwright.Storage.Plans;
global using Stockwright.Storage.Recipes;
