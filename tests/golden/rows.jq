# JSON as lines that can be read and searched: what an object holds of its own on one line behind its path, its
# parts on lines of theirs.
def simple: if type == "array" then all(.[]; type != "array" and type != "object") else type != "object" end;

def rows($path):
  if simple then "\($path): \(tojson)"
  elif type == "array" then
    to_entries[] | .key as $index | .value | rows("\($path)[\($index)]")
  else
    (with_entries(select(.value | simple)) | select(. != {}) | "\($path): \(tojson)"),
    (to_entries[] | .key as $key | .value | select(simple | not) | rows("\($path).\($key)"))
  end;

to_entries[] | .key as $key | .value | rows($key)
