// Stand-ins for what the start files of a static program call before main and after it: the
// unwinding tables need no registration, because the linker makes an index of them
// (src/CMakeLists.txt). The names are the linker's: --wrap=NAME sends calls of NAME to __wrap_NAME.

extern "C" {

void __wrap___register_frame_info(const void*, void*); // no header declares what a linker calls
void* __wrap___deregister_frame_info(const void*);

void __wrap___register_frame_info(const void*, void*) {}

void* __wrap___deregister_frame_info(const void*) {
    return nullptr;
}
}
